using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Designs;

/// <summary>A design laid open on the desk.</summary>
/// <param name="Version">Number of the version that the text is; give it back when saving.</param>
/// <param name="SwatchId">The swatch that calibrates it; null for none.</param>
/// <param name="YarnId">The yarn it is made of; null for none.</param>
/// <param name="Results">The stored results.</param>
public sealed record OpenDesign(
    Guid Id,
    string Title,
    DesignState State,
    string Text,
    int Version,
    Guid? SwatchId,
    Guid? YarnId,
    DateTimeOffset Updated,
    Results Results)
{
    /// <summary>The swatch of <see cref="SwatchId"/>, to compute with while typing.</summary>
    public SwatchDetails? Swatch { get; init; }

    /// <summary>The yarn of <see cref="YarnId"/>, to compute with while typing.</summary>
    public YarnDetails? Yarn { get; init; }
}

/// <summary>A version as the list of versions shows it.</summary>
/// <param name="SavedBy">Who saved it: her name, else her e-mail address; empty where that account is gone.</param>
public sealed record VersionSummary(
    int Number, DateTimeOffset SavedAt, string SavedBy, int Rows, int RowsChecked, int Errors, int Warnings)
{
    /// <summary>What it is kept for; empty for a save like any other.</summary>
    public string Name { get; init; } = "";
}

/// <summary>An old text.</summary>
public sealed record VersionText(int Number, DateTimeOffset SavedAt, string SavedBy, string Text);

/// <summary>How a save went.</summary>
public abstract record SaveOutcome;

/// <summary>Saved as a new version, or found to be the same as the one before.</summary>
public sealed record Saved(int Version, DateTimeOffset SavedAt, Results Results) : SaveOutcome;

/// <summary>Somebody else saved in the meantime; nothing was written. Theirs is here to compare.</summary>
/// <param name="TheirVersion">Base a new save on this number to keep your text as the next version after theirs.</param>
public sealed record Conflict(int TheirVersion, string TheirText, string SavedBy, DateTimeOffset SavedAt) : SaveOutcome
{
    /// <summary>Both texts put together; null where both changed the same lines, and a person must decide.</summary>
    public string? Together { get; init; }
}

/// <summary>Not saved, and why.</summary>
public sealed record Refused(IReadOnlyList<FieldMessage> Messages) : SaveOutcome;
