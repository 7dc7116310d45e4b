using System.Collections.Frozen;
using System.Text.RegularExpressions;
using PatternStudio.Craft.Anatomy;
using PatternStudio.Craft.Checking.Sentences;
using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Checking;

/// <summary>Compares the stitches that rows use with the stitches that the pattern defines.</summary>
internal static partial class StitchUseFindings
{
    /// <summary>Names that designers give to different stitches, so that a pattern must say which it means (../reference: 'Names are not standard').</summary>
    private static readonly FrozenSet<string> NotStandard = FrozenSet.Create("cl", "bobble", "puff", "popcorn", "shell");

    public static IEnumerable<Finding> Of(Pattern pattern)
    {
        List<StitchStep> used = [.. TreeSteps.OfRows(pattern).OfType<StitchStep>()];
        if (used.Count == 0) return [];
        var names = new NameFinder(pattern.Source);
        return Unused(pattern, used, names).Concat(Undefined(pattern, used, names));
    }

    /// <summary>A definition is used where a row or another definition works it, or where any of its names stands outside it.</summary>
    private static IEnumerable<Finding> Unused(Pattern pattern, List<StitchStep> used, NameFinder names)
    {
        HashSet<StitchId> worked = [.. used.Select(step => step.Stitch)];
        TextSpan[] lists = [.. pattern.Statements.Where(statement => statement.Kind is StatementKind.Abbreviation or StatementKind.Title).Select(statement => statement.Span)];
        foreach (StitchDefinition definition in pattern.Definitions)
        {
            if (!IsRead(pattern, definition) || IsPhrase(definition.Names) || worked.Contains(definition.Id) || definition.Names.Any(name => names.Find(name).Any(place => IsOutside(definition.Span, place) && !lists.Any(list => list.Contains(place))))) continue;
            TextSpan name = names.Find(definition.Names[0]).FirstOrDefault(place => definition.Span.Contains(place), definition.Span);
            yield return Finding.Of(FindingCodes.StitchUnused, name, DefinitionSentences.Unused(definition.Names[0]));
        }
    }

    /// <summary>From a definition that could not be read nothing follows.</summary>
    private static bool IsRead(Pattern pattern, StitchDefinition definition) =>
        !definition.Steps.IsEmpty || MotionReader.Read(pattern.Source, definition.Body, pattern.Terms.Terminology).IsWhole;

    /// <summary>'Shell in shell: …' explains a way of working, no stitch.</summary>
    private static bool IsPhrase(EquatableArray<string> names) => names.Any(name => NameWords.Of(name).Any(word => word is "in" or "over" or "around" or "into" or "between"));

    private static bool IsOutside(TextSpan span, TextSpan place) => place.End <= span.Start || place.Start >= span.End;

    /// <summary>One finding for each stitch, where it is first used. A stitch that is not in the vocabulary is read only where the text itself tells it.</summary>
    private static IEnumerable<Finding> Undefined(Pattern pattern, List<StitchStep> used, NameFinder names)
    {
        HashSet<StitchId> defined = [.. pattern.Definitions.Select(definition => definition.Id), .. TreeSteps.OfRows(pattern).OfType<GroupStep>().Select(group => group.Named).OfType<StitchId>(), .. used.Select(step => step.Completes).OfType<StitchId>()];
        foreach (StitchStep first in used.Where(step => NotStandard.Contains(step.Stitch.Value) && !defined.Contains(step.Stitch)).DistinctBy(step => step.Stitch))
        {
            if (MayBeToldElsewhere(pattern, first, names)) continue;
            yield return Finding.Of(FindingCodes.StitchUndefined, NameIn(pattern, first, names), DefinitionSentences.Undefined(NamesOf(pattern, first.Stitch)[0], pattern.Terms.Terminology));
        }
    }

    private static TextSpan NameIn(Pattern pattern, StitchStep step, NameFinder names) =>
        NamesOf(pattern, step.Stitch).SelectMany(names.Find).Where(step.Span.Contains).OrderBy(span => span.Start).ThenByDescending(span => span.Length).FirstOrDefault(step.Span);

    private static EquatableArray<string> NamesOf(Pattern pattern, StitchId stitch) =>
        Vocabulary.Standard.Find(stitch)?.Names(pattern.Terms.Terminology) ?? [stitch.Value];

    /// <summary>True where the name stands beside words that tell how it is worked, in a form that is not read as a definition: then nothing is claimed.</summary>
    private static bool MayBeToldElsewhere(Pattern pattern, StitchStep first, NameFinder names)
    {
        string text = pattern.Source.Content;
        foreach (TextSpan place in NamesOf(pattern, first.Stitch).SelectMany(names.Find))
        {
            TextSpan line = pattern.Source.Line(pattern.Source.Locate(place.Start).Line);
            if (HookWords().IsMatch(pattern.Source.Slice(line))) return true;
            string after = text.Substring(place.End, Math.Min(30, line.End - Math.Min(line.End, place.End)));
            string before = text[Math.Max(line.Start, place.Start - 3)..place.Start];
            if (ToldInBrackets().IsMatch(after) || before.Contains('(', StringComparison.Ordinal)) return true;
        }
        return false;
    }

    [GeneratedRegex(@"\b(insert|draw|pull|drop|hook|loops? on|thread over|work off|yarn over|together|last loop)\w*\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex HookWords();

    /// <summary>'shell (2 dc, ch 1, 2 dc)', 'cluster = 3 dc', 'shell of 5 dc'.</summary>
    [GeneratedRegex(@"^\w*\s*([\(\[=]|of\b|is\b|st(itch)?\s*[\(\[=])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ToldInBrackets();
}
