using System.Reflection;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace PatternStudio.Publishing.Pdf;

/// <summary>The one face that pages are set in: it lies in the program, so that every machine sets the same page and embeds the same letters.</summary>
internal static class PdfFonts
{
    private const string Family = "Atkinson Hyperlegible Next";
    private const string File = "PatternStudio.Publishing.Fonts.atkinson-hyperlegible-next-regular.ttf";

    /// <summary>The writer of PDFs asks one finder of faces for the whole program; ours is given once.</summary>
    static PdfFonts() => GlobalFontSettings.FontResolver ??= new Finder();

    /// <param name="size">Height of the line in the unit of what is drawn on.</param>
    public static XFont Of(double size) => new(Family, size, XFontStyleEx.Regular);

    private sealed class Finder : IFontResolver
    {
        public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) => new(Family);

        public byte[] GetFont(string faceName)
        {
            using Stream face = Assembly.GetExecutingAssembly().GetManifestResourceStream(File)!;
            var bytes = new byte[face.Length];
            face.ReadExactly(bytes);
            return bytes;
        }
    }
}
