using Microsoft.Extensions.Localization;

namespace PatternStudio.Web.Features.Desk;

/// <summary>What the editor in the browser says.</summary>
/// <param name="Editor">Its own phrases, by the editor's names for them.</param>
internal sealed record EditorSays(
    string Label, string DescribedBy, string Empty, string Mend, string About, string Fold, string Unfold, IReadOnlyDictionary<string, string> Editor)
{
    public static EditorSays In(IStringLocalizer<DeskWords> words) => new(
        words["WrittenInstructions"], "words-help", words["WordsPlaceholder"], words["Mend"], words["AboutFinding"], words["FoldPiece"], words["UnfoldPiece"],
        new Dictionary<string, string>
        {
            ["mended"] = words["MendedSaid"],
            ["nothing to mend here"] = words["NothingToMendHere"],
            ["nothing found here"] = words["NothingFoundHere"],
            ["Completions"] = words["Choices"],
            ["Find"] = words["FindFor"],
            ["Replace"] = words["ReplaceBy"],
            ["next"] = words["FindNext"],
            ["previous"] = words["FindPrevious"],
            ["all"] = words["FindAll"],
            ["match case"] = words["MatchCase"],
            ["by word"] = words["WholeWords"],
            ["regexp"] = words["SearchPatterns"],
            ["replace"] = words["ReplaceOne"],
            ["replace all"] = words["ReplaceAll"],
            ["close"] = words["Close"],
        });
}
