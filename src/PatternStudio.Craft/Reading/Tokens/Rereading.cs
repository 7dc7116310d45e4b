namespace PatternStudio.Craft.Reading.Tokens;

/// <summary>
/// What was read at the last few places, so that constructs which begin with the same words don't read them again: each of 'sc in next st' asks for the
/// place 'in next st' when it tries whether a join, a decrease or a plain stitch is meant.
/// </summary>
internal sealed class Rereading<T>
{
    /// <summary>A clause or two; a power of two.</summary>
    private const int Places = 64;

    private readonly Entry[] entries = new Entry[Places];
    private int age = 1;

    /// <summary>What was read, and where reading went on.</summary>
    private struct Entry
    {
        public int Age, At, End, After;
        public bool First;
        public T Result;
    }

    /// <summary>Forgets everything: the text has named another stitch, and the same words may now mean something else.</summary>
    public void Forget() => age++;

    /// <summary>Reads at the cursor, or moves it as it was moved when the same words were read before.</summary>
    /// <param name="cursor">Where to read. The end of its stretch is a part of what is remembered, and whether it stands at the beginning.</param>
    /// <param name="read">Reads, and leaves the cursor where reading goes on. What it comes to must follow from the words alone.</param>
    public T Read(Cursor cursor, Func<Cursor, T> read)
    {
        int at = cursor.At;
        bool first = at == cursor.Start;
        ref Entry kept = ref entries[at & (Places - 1)];
        if (kept.Age == age && kept.At == at && kept.End == cursor.End && kept.First == first)
        {
            cursor.At = kept.After;
            return kept.Result;
        }
        int before = age;
        T result = read(cursor);
        kept = new Entry { Age = before, At = at, End = cursor.End, First = first, After = cursor.At, Result = result };
        return result;
    }
}
