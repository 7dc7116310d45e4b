namespace PatternStudio.Web.Features.Settings;

/// <summary>Names the resource file of the words about settings.</summary>
public sealed class SettingsWords;
