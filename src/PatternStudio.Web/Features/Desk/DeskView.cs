namespace PatternStudio.Web.Features.Desk;

/// <summary>What the desk shows beside the words, or, on a phone, in their place.</summary>
public enum DeskView { Words, Rows, Chart, Materials, Photos }
