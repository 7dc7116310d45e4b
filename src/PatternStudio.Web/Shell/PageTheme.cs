using MudBlazor;

namespace PatternStudio.Web.Shell;

/// <summary>The kit's theme in the studio's colours. The same colours by name are in styles/tokens.css.</summary>
internal static class PageTheme
{
    private static readonly string[] Words = ["Atkinson Hyperlegible Next", "system-ui", "sans-serif"];
    private static readonly string[] Headings = ["Petrona", "Georgia", "serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#285a72", PrimaryContrastText = "#fcfbf7", Secondary = "#9c3226", Tertiary = "#3c6339",
            Info = "#285a72", Success = "#3c6339", Warning = "#74560a", Error = "#9c3226",
            Background = "#eeece4", Surface = "#fcfbf7", AppbarBackground = "#fcfbf7", AppbarText = "#202b33",
            TextPrimary = "#202b33", TextSecondary = "#505b64", ActionDefault = "#505b64",
            LinesDefault = "#d8d4c7", LinesInputs = "#868372", Divider = "#d8d4c7", Dark = "#202b33",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#8cc0d6", PrimaryContrastText = "#10202a", Secondary = "#f39a8c", Tertiary = "#a7cc9a",
            Info = "#8cc0d6", InfoContrastText = "#10202a", Success = "#a7cc9a", SuccessContrastText = "#10202a",
            Warning = "#e3c36a", WarningContrastText = "#10202a", Error = "#f39a8c", ErrorContrastText = "#10202a",
            Background = "#161b1f", Surface = "#1e252a", AppbarBackground = "#1e252a", AppbarText = "#ebe6da",
            TextPrimary = "#ebe6da", TextSecondary = "#b3b6ae", ActionDefault = "#b3b6ae",
            LinesDefault = "#39434a", LinesInputs = "#7f8b92", Divider = "#39434a", Dark = "#0d1114",
        },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Words, FontSize = "1rem", LineHeight = "1.5", LetterSpacing = "normal" },
            Button = new ButtonTypography { FontFamily = Words, FontWeight = "550", TextTransform = "none", LetterSpacing = "normal" },
            H6 = new H6Typography { FontFamily = Headings, FontSize = "1.25rem", FontWeight = "600", LetterSpacing = "normal" },
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "7px" },
    };
}
