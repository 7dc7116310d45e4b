using PatternStudio.Craft.Reading.Tree;

namespace PatternStudio.Craft.Writing.Instructions;

/// <summary>Writes the count of a row: '(20 sts)', '(10 puffs, 11 sc)', '[20 (30, 40) sts]' where sizes have brackets of their own.</summary>
internal sealed class CountWords(StitchWords stitches)
{
    private readonly PlaceWords places = new(stitches);

    public string Of(StatedCount count)
    {
        if (count.PerRow || count.Items.Any(item => item.Thing == CountedThing.Other)) return AsWritten(count.Text);
        string words = string.Join(", ", count.Items.Select(Of));
        return count.Items.All(item => item.Number.IsPlain) ? $"({words})" : $"[{words}]";
    }

    private static string AsWritten(string text)
    {
        string words = text.Trim();
        return words.StartsWith('(') || words.StartsWith('[') ? words : $"({words})";
    }

    private string Of(StatedItem item)
    {
        if (item.Kind is not { } kind) return NumberWords.Of(item.Number);
        return $"{NumberWords.Of(item.Number)} {(NumberWords.IsOne(item.Number) ? places.Single(kind) : places.Several(kind))}";
    }
}
