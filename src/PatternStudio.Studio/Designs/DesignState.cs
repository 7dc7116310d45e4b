namespace PatternStudio.Studio.Designs;

/// <summary>How far a design has come.</summary>
public enum DesignState { Idea, Writing, Testing, Published }
