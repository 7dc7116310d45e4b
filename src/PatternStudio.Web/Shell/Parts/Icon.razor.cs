using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Shell.Parts;

/// <summary>A small drawing beside a word; never alone without a label.</summary>
public sealed partial class Icon
{
    private static readonly Dictionary<string, string> Shapes = new()
    {
        ["sheet"] = "M6 3h9l4 4v14H6zM15 3v4h4M9 11h7M9 14h7M9 17h4",
        ["swatch"] = "M4 4h16v16H4zM4 9.3h16M4 14.7h16M9.3 4v16M14.7 4v16",
        ["yarn"] = "M12 3a9 9 0 1 0 .01 0M5 7c5 0 10 4 12 12M3.5 12c4 0 7 3 9 8.9M9 3.6c5 1 9 5 11.5 10M19 18.5c2 .5 2.5 2 4 2",
        ["sun"] = "M12 8a4 4 0 1 0 .01 0M12 2v2.5M12 19.5V22M2 12h2.5M19.5 12H22M5 5l1.7 1.7M17.3 17.3 19 19M19 5l-1.7 1.7M6.7 17.3 5 19",
        ["moon"] = "M20 14.5A8.5 8.5 0 0 1 9.5 4 8.5 8.5 0 1 0 20 14.5",
        ["door"] = "M13 4H5v16h8M10 12h11M17.5 8.5 21 12l-3.5 3.5",
        ["error"] = "M12 3 22 20.5H2zM12 10v5M12 17.6v.2",
        ["warning"] = "M12 3a9 9 0 1 0 .01 0M12 7.5v6M12 16.6v.2",
        ["note"] = "M5 4h14v12h-6l-4 4v-4H5zM9 9h6M9 12h4",
        ["good"] = "M4 12.5 9.5 18 20 6.5",
        ["plus"] = "M12 5v14M5 12h14",
        ["minus"] = "M5 12h14",
        ["fit"] = "M4 9V4h5M20 9V4h-5M4 15v5h5M20 15v5h-5",
        ["search"] = "M10.5 4a6.5 6.5 0 1 0 .01 0M15.5 15.5 20.5 20.5",
        ["save"] = "M5 4h11l3 3v13H5zM8 4v5h7V4M8 20v-6h8v6",
        ["pen"] = "M4 20l1-4L16.5 4.5l3 3L8 19zM14 7l3 3",
        ["hook"] = "M4 20 15.5 8.5M15.5 8.5c-1.5-3 .5-5.5 3-5 2.5.5 2.5 4 0 4.2",
        ["bin"] = "M5 7h14M9 7V4h6v3M7 7l1 13h8l1-13M10 11v5M14 11v5",
        ["print"] = "M7 9V3h10v6M7 17H4V9h16v8h-3M7 14h10v7H7z",
        ["undo"] = "M9 8 4.5 12.5 9 17M5 12.5h9a5 5 0 0 0 0-10",
        ["question"] = "M12 3a9 9 0 1 0 .01 0M9.5 9.5c0-3.4 5-3.2 5-.2 0 2-2.4 2.2-2.5 4.2M12 16.6v.2",
        ["sliders"] = "M4 7h9M17 7h3M4 17h3M11 17h9M15 4.8v4.4M9 14.8v4.4",
        ["clock"] = "M12 3a9 9 0 1 0 .01 0M12 7v5l3.5 2",
        ["tag"] = "M4 4h8l8 8-8 8-8-8zM8.2 8.2v.1",
        ["cards"] = "M4 4h7v7H4zM13 4h7v7h-7zM4 13h7v7H4zM13 13h7v7h-7z",
        ["lines"] = "M4 6h16M4 12h16M4 18h16",
        ["turn"] = "M8 20V5M4.5 8.5 8 5l3.5 3.5M16 4v15M12.5 15.5 16 19l3.5-3.5",
        ["download"] = "M12 4v11M7.5 10.5 12 15l4.5-4.5M4 17v3h16v-3",
        ["upload"] = "M12 15V4M7.5 8.5 12 4l4.5 4.5M4 17v3h16v-3",
        ["mend"] = "M5 19 15 9M13 4l1 2.5L16.5 7.5 14 8.5 13 11l-1-2.5L9.5 7.5 12 6.5zM19 12v3M17.5 13.5h3",
    };

    [Parameter, EditorRequired]
    public string Name { get; set; } = "";

    private string Shape => Shapes[Name];
}
