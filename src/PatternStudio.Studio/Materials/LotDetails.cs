namespace PatternStudio.Studio.Materials;

/// <summary>A lot in the cupboard.</summary>
/// <param name="YarnId">A yarn of the studio.</param>
/// <param name="Balls">Whole balls, 0 to 10 000.</param>
/// <param name="OpenedGrams">What begun balls weigh, above 0, at most 10 000 g; null for none.</param>
/// <param name="DyeLot">As on the band; may be empty.</param>
/// <param name="Place">Where it lies; may be empty.</param>
/// <param name="Note">May be empty.</param>
public sealed record LotDetails(Guid YarnId, int Balls, double? OpenedGrams, string DyeLot, string Place, string Note);

/// <summary>A lot of the studio.</summary>
/// <param name="Yarn">What it is.</param>
/// <param name="Reserved">What designs have set aside, by title.</param>
public sealed record KeptLot(Guid Id, LotDetails Details, YarnDetails Yarn, IReadOnlyList<LotReservation> Reserved)
{
    /// <summary>What there is; null where balls were counted and the label tells no weight of one.</summary>
    public double? Grams => Details.Balls == 0 ? Details.OpenedGrams ?? 0 : (Details.Balls * Yarn.GramsPerBall) + (Details.OpenedGrams ?? 0);

    /// <summary>What all designs have set aside.</summary>
    public double ReservedGrams => Reserved.Sum(reserved => reserved.Grams);

    /// <summary>What nobody has set aside; below 0 where more was set aside than there is now; null where not known.</summary>
    public double? FreeGrams => Grams - ReservedGrams;

    /// <summary>What a design may take: what is free and what it has set aside itself.</summary>
    public double? GramsFor(Guid designId) => FreeGrams + ReservedBy(designId);

    /// <summary>What a design has set aside; 0 for nothing.</summary>
    public double ReservedBy(Guid designId) => Reserved.Where(reserved => reserved.DesignId == designId).Sum(reserved => reserved.Grams);

    /// <summary>So many grams as metres; null where the label does not tell.</summary>
    public double? Metres(double? grams) => grams / Yarn.GramsPerBall * Yarn.MetresPerBall;
}

/// <summary>A lot that was taken out of the cupboard, with all that it takes to put it back.</summary>
/// <param name="Reserved">Grams that each design had set aside.</param>
public sealed record RemovedLot(LotDetails Details, IReadOnlyDictionary<Guid, double> Reserved);

/// <summary>What a design has set aside of a lot.</summary>
public sealed record LotReservation(Guid DesignId, string Title, double Grams);
