using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Working;

/// <summary>What is asked of each cell as it is met. Asked by a struct, so that a long row worked stitch by stitch is asked without memory being taken for each.</summary>
internal interface ICellQuestion
{
    /// <summary>How much of what is asked for the cell offers; 0 for none.</summary>
    long Of(Cell cell, long index);
}

/// <summary>How many places of a kind?</summary>
internal readonly struct PlacesOfKind(Places places, PlaceKind kind) : ICellQuestion
{
    public long Of(Cell cell, long index) => places.Offers(cell, index, kind);
}

/// <summary>How many stitches?</summary>
internal readonly struct StitchesOf(Places places) : ICellQuestion
{
    public long Of(Cell cell, long index) => places.Stitches(cell);
}

/// <summary>Are they chains that make a space of their own?</summary>
internal readonly struct IsSpaces : ICellQuestion
{
    public long Of(Cell cell, long index) => Places.IsSpace(cell) ? 1 : 0;
}

/// <summary>Any other question.</summary>
internal readonly struct Fits(Func<Cell, long, bool> fits) : ICellQuestion
{
    public long Of(Cell cell, long index) => fits(cell, index) ? 1 : 0;
}

/// <summary>Any other weight.</summary>
internal readonly struct Weighs(Func<Cell, long, long> weigh) : ICellQuestion
{
    public long Of(Cell cell, long index) => weigh(cell, index);
}
