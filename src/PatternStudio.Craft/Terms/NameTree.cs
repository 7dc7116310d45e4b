namespace PatternStudio.Craft.Terms;

/// <summary>Stitch names word by word, so that the longest name that fits is found: 'dc' in 'dc in next', 'half double crochet' in 'half double crochet in'.</summary>
public sealed class NameTree
{
    private readonly Dictionary<string, NameTree> next = new(StringComparer.Ordinal);

    /// <summary>The stitch whose name ends here; null where none does.</summary>
    public StitchId? Stitch { get; private set; }

    /// <summary>The tree one word further; null where no name goes on so. A plural s is looked through.</summary>
    /// <param name="word">In lower case, synonyms replaced (<see cref="Synonyms.Usual"/>).</param>
    public NameTree? Next(string word) =>
        next.TryGetValue(word, out NameTree? found) || (word.Length > 2 && word[^1] == 's' && next.TryGetValue(word.TrimEnd('s').TrimEnd('\''), out found))
            ? found
            : null;

    /// <summary>Enters a name. The first stitch to claim a name keeps it.</summary>
    internal void Add(string name, StitchId stitch)
    {
        NameTree node = this;
        foreach (string word in NameWords.Of(name))
        {
            if (!node.next.TryGetValue(word, out NameTree? further)) node.next[word] = further = new NameTree();
            node = further;
        }
        if (node != this) node.Stitch ??= stitch;
    }
}
