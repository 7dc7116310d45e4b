namespace PatternStudio.Cli.Tests;

/// <summary>A call that can't be answered ends with exit code 2, one sentence on the error stream, and nothing in the output.</summary>
public sealed class WrongCallTests
{
    [Theory]
    [InlineData("", "Say what to do with the pattern; '--help' shows how.")]
    [InlineData("knit scarf.txt", "There is no command 'knit'; '--help' shows how.")]
    [InlineData("check", "Name the pattern's file, or give - to read what is piped in.")]
    [InlineData("check one.txt two.txt", "'check' takes one file, and 'two.txt' is one word too many; 'check --help' shows how.")]
    [InlineData("check --jsn scarf.txt", "There is no option '--jsn'; 'check --help' shows how.")]
    [InlineData("check scarf.txt --jsn", "'check' has no option '--jsn'; 'check --help' shows how.")]
    [InlineData("check scarf.txt --terms fr", "Terms are us or uk, not 'fr'; 'check --help' shows how.")]
    [InlineData("check nowhere.txt", "There is no file 'nowhere.txt'.")]
    [InlineData("check @nowhere.txt", "There is no file '@nowhere.txt'.")]
    public void One_sentence_says_what_is_wrong(string words, string sentence)
    {
        Call call = Call.With(words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((ExitCode.Unusable, "", sentence + "\n"), (call.ExitCode, call.Output, call.Error));
    }

    [Fact]
    public void A_folder_is_no_pattern()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal($"'{folder.Path}' is a folder; name the pattern's file in it.\n", Refused(folder.Path).Error);
    }

    [Fact]
    public void A_picture_is_no_pattern()
    {
        using var folder = new TemporaryFolder();
        string picture = folder.File("swatch.png", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13]);
        Assert.Equal($"'{picture}' is no text file; save the pattern as plain text first.\n", Refused(picture).Error);
    }

    [Theory]
    [InlineData(5_000_000)]
    [InlineData(9_000_000)]
    public void A_text_longer_than_any_pattern_is_not_read(int length)
    {
        using var folder = new TemporaryFolder();
        string book = folder.File("book.txt", new string('x', length));
        Assert.Equal($"'{book}' is too long: a pattern may have 2,000,000 characters, about 1,000 printed pages.\n", Refused(book).Error);
    }

    [Fact]
    public void What_is_piped_in_is_judged_like_a_file()
    {
        Call call = Call.Piping([1, 2, 3], "check", "-");
        Assert.Equal((ExitCode.Unusable, "'standard input' is no text file; save the pattern as plain text first.\n"), (call.ExitCode, call.Error));
    }

    [Fact]
    public void Help_is_no_error_and_names_every_command()
    {
        Call call = Call.With("--help");
        Assert.Equal((ExitCode.Fine, ""), (call.ExitCode, call.Error));
        Assert.Contains("check", call.Output, StringComparison.Ordinal);
    }

    private static Call Refused(string file)
    {
        Call call = Call.With("check", file);
        Assert.Equal((ExitCode.Unusable, ""), (call.ExitCode, call.Output));
        return call;
    }
}
