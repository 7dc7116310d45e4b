using PatternStudio.Craft.Writing.Completion;

namespace PatternStudio.Web.Features.Desk;

/// <summary>A choice of words as the browser shows it.</summary>
/// <param name="From">Where in the line the words begin that it takes the place of.</param>
/// <param name="Words">The words.</param>
/// <param name="Says">What they are.</param>
public sealed record WordChoice(int From, string Words, string Says);

/// <summary>Tells what can come next. The rows above the cursor are read and worked once, as long as they stay the same.</summary>
internal sealed class NextWords
{
    private (string Text, Task<RowsAbove> Rows)? above;

    public async Task<IReadOnlyList<WordChoice>> AtAsync(string textAbove, string line, bool asked)
    {
        if (above is not { } known || known.Text != textAbove) above = known = (textAbove, Task.Run(() => RowsAbove.Of(textAbove)));
        RowsAbove rows = await known.Rows;
        return [.. (await Task.Run(() => WhatComesNext.At(rows, line, asked))).Select(choice => new WordChoice(choice.From, choice.Words, choice.Says))];
    }
}
