namespace PatternStudio.Studio.Designs;

/// <summary>What a design waits for.</summary>
public enum WaitsFor
{
    /// <summary>Nothing is written that could be worked.</summary>
    FirstRow,

    /// <summary>The designer: errors are to be mended.</summary>
    Mending,

    /// <summary>The designer: warnings are to be looked at, or rows that could not be checked.</summary>
    Looking,

    /// <summary>A measured swatch: sizes and yarn are not known without one.</summary>
    Swatch,

    /// <summary>Nothing is missing: it can go to testers.</summary>
    Testers,

    /// <summary>Testers have it.</summary>
    Testing,

    /// <summary>Nothing.</summary>
    Nothing,
}

/// <summary>Says what a design waits for, from its state and its stored results alone.</summary>
public static class Waiting
{
    /// <summary>The first of these that holds: rows, errors, warnings, a swatch; then whatever the state says.</summary>
    public static WaitsFor Of(DesignSummary design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return design switch
        {
            { Errors: > 0, Rows: > 0 } => WaitsFor.Mending,
            { Rows: 0 } => WaitsFor.FirstRow,
            _ when design.Warnings > 0 || design.RowsChecked < design.Rows => WaitsFor.Looking,
            { State: DesignState.Published } => WaitsFor.Nothing,
            { State: DesignState.Testing } => WaitsFor.Testing,
            { HasSwatch: false } => WaitsFor.Swatch,
            _ => WaitsFor.Testers,
        };
    }
}
