namespace PatternStudio.Web.Features.Desk;

/// <summary>Whether the words on the desk are the saved ones.</summary>
public enum SavedState { Saved, Unsaved, Saving }
