namespace PatternStudio.Web.Shell;

public static partial class Typed
{
    public static TypedNumber Grams(string written) => Unit(written, ("kg", 1000), ("g", 1), ("oz", 28.349523125));

    public static TypedNumber Metres(string written) => Unit(written, ("m", 1), ("yds", 0.9144), ("yd", 0.9144));

    public static TypedNumber HookMillimetres(string written) => Unit(written, ("mm", 1));

    private static TypedNumber Unit(string written, params (string Word, double Times)[] units)
    {
        string number = written.Trim();
        foreach ((string word, double times) in units)
            if (number.EndsWith(word, StringComparison.OrdinalIgnoreCase))
                return Count(number[..^word.Length].TrimEnd()) is { Trouble: null } read ? new(read.Value * times, null) : TypedNumber.Wrong("Write a number above zero.");
        return Count(number);
    }
}
