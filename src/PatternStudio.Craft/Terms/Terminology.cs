namespace PatternStudio.Craft.Terms;

/// <summary>Whose words a pattern uses: 'double crochet' is one stitch in the USA and another in the United Kingdom.</summary>
public enum Terminology
{
    /// <summary>US terms: single crochet, half double, double, treble.</summary>
    Us,

    /// <summary>UK terms (also Ireland, Australia, New Zealand, South Africa): double, half treble, treble, double treble.</summary>
    Uk,
}
