namespace PatternStudio.Web.Shell;

/// <summary>Names the resource file of the frame's words.</summary>
public sealed class ShellWords;
