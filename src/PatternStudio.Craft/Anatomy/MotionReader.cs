using PatternStudio.Craft.Anatomy.Words;
using PatternStudio.Craft.Terms;
using PatternStudio.Craft.Text;

namespace PatternStudio.Craft.Anatomy;

/// <summary>
/// Reads the words that define a stitch as hook motions: '[Yo, insert hook in st, yo and draw up a loop] 3 times in same st, yo and draw
/// through all 7 loops on hook'. Modern and old wording, repeats worked out. What it can't read it says, and guesses nothing.
/// </summary>
public static class MotionReader
{
    /// <summary>Reads the defining words of a stitch, without its name. Never throws on any text; its work grows with the words and no faster.</summary>
    /// <param name="text">The text that holds them; spans of the result are places in it.</param>
    /// <param name="span">The defining words.</param>
    /// <param name="terminology">In whose words other stitches are named: 'holding last loop of each on hook, 3 dc'.</param>
    public static ReadMotions Read(string text, TextSpan span, Terminology terminology = Terminology.Us)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new Reading(MotionWords.Split(text, span), terminology).Read();
    }

    /// <summary>Reads the defining words of a stitch in a pattern.</summary>
    public static ReadMotions Read(SourceText source, TextSpan span, Terminology terminology = Terminology.Us)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Read(source.Content, span, terminology);
    }

    /// <summary>Reads motions that stand by themselves, such as those of the vocabulary.</summary>
    public static ReadMotions Read(string text, Terminology terminology = Terminology.Us) =>
        Read(text, new TextSpan(0, text?.Length ?? 0), terminology);

    private sealed class Reading
    {
        private readonly WordCursor words;
        private readonly MotionComposer motions = new();
        private readonly RepeatMarks marks = new();
        private readonly BracketPhrase brackets;
        private readonly Terminology terminology;

        public Reading(IReadOnlyList<MotionWord> split, Terminology terminology)
        {
            words = new WordCursor(split);
            brackets = new BracketPhrase(words, motions, marks);
            this.terminology = terminology;
        }

        public ReadMotions Read()
        {
            Prose.SkipTitle(words);
            while (!words.AtEnd)
            {
                if (words.Now.EndsSentence) EndSentence();
                else if (!Motion() && !FillerPhrase.TryRead(words)) LeaveWord();
            }

            return motions.Finish();
        }

        private bool Motion() =>
            RepeatPhrase.TryRead(words, motions, marks)
            || StatedLoopsPhrase.TryRead(words, motions)
            || YarnOverPhrase.TryRead(words, motions)
            || InsertPhrase.TryRead(words, motions)
            || KeepLastLoopPhrase.TryRead(words, motions, terminology)
            || DroppedLoopPhrase.TryRead(words, motions)
            || DrawPhrase.TryRead(words, motions)
            || CompletePhrase.TryRead(words, motions, terminology)
            || ChainPhrase.TryRead(words, motions)
            || NamedStitchPhrase.TryRead(words, motions, terminology)
            || brackets.TryRead();

        private void EndSentence()
        {
            if (words.Now.Is(".") && !IsAbbreviated()) marks.Sentence = motions.Count;
            words.At++;
            if (motions.IsFinished) Prose.SkipRemark(words);
        }

        /// <summary>'st.' ends no sentence.</summary>
        private bool IsAbbreviated() => words.Peek(-1).Text is "st" or "sts" or "sp" or "ch" or "lp" or "lps" or "rep" && !words.AtEnd;

        private void LeaveWord()
        {
            motions.LeaveUnread(words.Now.Span);
            words.At++;
        }
    }
}
