using PatternStudio.Craft.Reading.Tree;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Tests.Reading;

/// <summary>
/// Writes a tree in short, so that a table can show it: <c>ch 3=dc; sk 2 st; *{dc next st; 2dc next ch-1sp}(end); 5(group: …)same st</c>.
/// </summary>
public static class TreeText
{
    public static string Of(Pattern pattern) => string.Join("\n", pattern.Pieces.SelectMany(Lines));

    private static IEnumerable<string> Lines(Piece piece)
    {
        if (piece.Name.Length > 0) yield return $"== {piece.Name}{(piece.Make is { } make ? $" x{Of(make)}" : "")}";
        foreach (PieceItem item in piece.Items) yield return Of(item);
    }

    public static string Of(PieceItem item) => item switch
    {
        RowInstruction row => $"{Of(row.Heading)}: {Of(row.Steps)}{(row.Stated is { } stated ? $" ({Of(stated)})" : "")}",
        RepeatRows repeat => $"REP {List(repeat.Rows)} {repeat.Until}"
            + $"{(repeat.Count is { } count ? $" {Of(count)}" : "")}{(repeat.Millimetres is { } mm ? $" {Of(mm)}mm" : "")}{(repeat.LastRows is { } last ? $" last{last}" : "")}"
            + $"{(repeat.EndingWith is { } with ? $" ending {with}" : "")}{(repeat.EndingSide is { } side ? $" ending {side}" : "")}{(repeat.Stated is { } stated ? $" ({Of(stated)})" : "")}",
        WorkAsPiece reference => $"AS {reference.Piece}{(reference.ThroughRow is { } row ? $" through {row}" : "")}",
        Passage passage => $"{(passage.IsRemark ? "NOTE" : "PASSAGE")} {passage.Text}",
        _ => "?",
    };

    public static string Of(RowHeading heading) => heading.Numbering switch
    {
        RowNumbering.Listed => $"{heading.Kind} {List(heading.Numbers)}",
        RowNumbering.Range => $"{heading.Kind} {Of(heading.First!)}-{Of(heading.Last!)}",
        RowNumbering.Next => $"{heading.Kind} next {Of(heading.Last!)}",
        RowNumbering.EveryOther => $"{heading.Kind} every other {List(heading.Numbers)}",
        _ => $"{heading.Kind}",
    } + (heading.Side is { } side ? $" {(side == FabricSide.Right ? "RS" : "WS")}" : "");

    public static string Of(EquatableArray<Step> steps) => string.Join("; ", steps.Select(Of));

    public static string Of(Step step) => step switch
    {
        StitchStep stitch => Of(stitch),
        ChainStep chain => $"ch {Of(chain.Count)}{Of(chain.Role, chain.CountsAs, chain.ThenChains)}",
        SkipStep skip => $"sk {Of(skip.Count)} {Of(skip.Kind)}",
        GroupStep group => $"({Of(group.Steps)}) {Of(group.Where)}{(group.Named is { } name ? $" named {name}" : "")}{(group.Skipped is { } skipped ? $" skipped{Of(skipped.Role, skipped.CountsAs, skipped.ThenChains)}" : "")}",
        RepeatStep repeat => $"{Of(repeat.Mark)}{{{Of(repeat.Steps)}}} {Of(repeat.Extent)}"
            + $"{(repeat.LastStopsAfter is { } stops ? $" last stops {stops}" : "")}{(repeat.Ending.IsEmpty ? "" : $" ending {{{Of(repeat.Ending)}}}")}",
        TurnStep => "turn",
        DoNotTurnStep => "don't turn",
        JoinStep join => $"join {join.Stitch}{(join.FormsRing ? " ring" : "")}{(join.Where is { } where ? $" {Of(where)}" : "")}{(join.CountsAsSpace is { } chains ? $" =ch-{chains}sp" : "")}",
        DoNotJoinStep => "don't join",
        MagicRingStep => "magic ring",
        AttachStep attach => $"attach {attach.Colour}{(attach.Stitch is { } with ? $" with {with}" : "")}{(attach.Where is { } where ? $" {Of(where)}" : "")}",
        FastenOffStep => "fasten off",
        ColourStep colour => $"colour {colour.Colour}",
        MarkerStep => "marker",
        WorkAlongStep along => $"along {Of(along.Along)}",
        LeaveUnworkedStep leave => $"leave {(leave.Count is { } count ? $"{Of(count)} " : "")}{Of(leave.Kind)}",
        EitherStep either => $"{Of(either.First)} | {Of(either.Other)}",
        MeshStep mesh => $"{Of(mesh.Count)} {(mesh.Solid ? "solid" : "open")}",
        UncountedStep uncounted => $"{uncounted.Reason}‘{uncounted.Text}’",
        MotionsStep => "motions",
        AsRowStep row => $"as {(row.PreviousRow ? "last" : List(row.Rows))}{(row.Times is { } times ? $" x{Of(times)}" : "")}{(row.WithChanges ? " changed" : "")}"
            + $"{(row.LoopChains is { } chains ? $" ch{Of(chains)} loops" : "")}{(row.LoopsBelow is { } below ? $" into ch-{below}sp" : "")}{(row.Ending.IsEmpty ? "" : $" ending {{{Of(row.Ending)}}}")}",
        RemarkStep remark => $"“{remark.Text}”",
        UnreadStep unread => $"UNREAD<{unread.Text}>{(unread.Nearest is { } near ? $"~{near}" : "")}",
        _ => step.GetType().Name,
    };

    private static string Of(StitchStep step) =>
        $"{(step.PerPlace is { } per && Of(per) != "1" ? Of(per) : "")}{step.Stitch}{(step.Count is { } count ? $" x{Of(count)}" : "")}"
        + $"{(step.ChainsBetween is { } between ? $" ch{Of(between)} between" : "")}{(step.Where is { } where ? $" {Of(where)}" : "")}{(step.Completes is { } completes ? $" for {completes}" : "")}"
        + $"{(step.Skipped is { } skipped ? $" skipped{Of(skipped.Role, skipped.CountsAs, skipped.ThenChains)}" : "")}";

    private static string Of(ChainRole role, Craft.Terms.StitchId? stitch, int then) => role switch
    {
        ChainRole.Counts => $"={stitch?.Value ?? "st"}{(then > 0 ? $"+ch{then}" : "")}",
        ChainRole.DoesNotCount => "=none",
        _ => "",
    };

    private static string Of(RepeatMark mark) => mark switch
    {
        RepeatMark.Star => "*", RepeatMark.DoubleStar => "**", RepeatMark.Dagger => "†", RepeatMark.StarPair => "*-*", RepeatMark.Brackets => "[]",
        RepeatMark.Parentheses => "()", RepeatMark.Braces => "{}", _ => "words",
    };

    public static string Of(Placement where) =>
        $"{Choice(where)}{(where.Count is { } count ? $" {Of(count)}" : "")} {Of(where.Kind)}"
        + $"{(where.Within is { } within ? $" of {Of(within)}" : "")}{(where.Extent is { } extent ? $" {Of(extent)}" : "")}"
        + $"{(where.Loop == LoopChoice.Both ? "" : $" {where.Loop}Loop")}{(where.Post == PostChoice.None ? "" : $" {where.Post}Post")}"
        + $"{(where.RowsBelow == 0 ? "" : $" below{where.RowsBelow}")}{(where.InRow is { } inRow ? $" row{inRow}" : "")}{(where.Further is null ? "" : " …")}{(where.And is { } and ? $" & {Of(and)}" : "")}";

    private static string Choice(Placement where) =>
        where.Choice is PlaceChoice.Nth or PlaceChoice.FromHook or PlaceChoice.Between && where.Ordinal is { } ordinal ? $"{where.Choice.ToString().ToLowerInvariant()}{ordinal}" : where.Choice.ToString().ToLowerInvariant();

    public static string Of(PlaceKind kind) => kind.Noun switch
    {
        PlaceNoun.AnyStitch => "st",
        PlaceNoun.Stitch => kind.Stitch!.Value.Value,
        PlaceNoun.Chain => "ch",
        PlaceNoun.ChainSpace => $"ch{(kind.Chains is { } chains ? $"-{chains}" : "")}sp",
        PlaceNoun.Space => "sp",
        PlaceNoun.Group => $"group:{kind.Stitch}",
        PlaceNoun.TurningChain => $"tch{(kind.Chains is { } chains ? $"-{chains}" : "")}",
        _ => kind.Noun.ToString().ToLowerInvariant(),
    };

    public static string Of(Extent extent) => extent.Kind switch
    {
        ExtentKind.Times => $"x{Of(extent.Count!)}",
        ExtentKind.ToEnd => extent.Around ? "around" : "to-end",
        ExtentKind.ToLast => $"to-last {Of(extent.Count!)}{(extent.Place is { } place ? $" {Of(place)}" : "")}",
        ExtentKind.ToPlace => $"to-place {Of(extent.Place!)}",
        _ => "unstated",
    };

    public static string Of(StatedCount count) => string.Join(", ", count.Items.Select(item => $"{Of(item.Number)} {(item.Kind is { } kind ? Of(kind) : item.Thing.ToString().ToLowerInvariant())}{(item.Thing == CountedThing.Other && item.Kind is not null ? "?" : "")}"));

    public static string Of(SizedNumber number) => string.Join("/", number.Values.Select(value => value?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"));

    private static string List(EquatableArray<int> numbers) => string.Join(",", numbers);
}
