using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using PatternStudio.Studio;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.Desk;

namespace PatternStudio.Web.Tests.Desk;

public sealed class PhotosPanelTests : PageTest
{
    private static readonly KeptDesignPhoto OnTheLine = new(new Guid(1, 0, 0, new byte[8]), "on the line", true), Folded = new(new Guid(2, 0, 0, new byte[8]), "", false);
    private readonly List<PreparedPhoto> added = [];
    private readonly List<string> done = [];
    private Outcome answer = Outcome.Done;

    public PhotosPanelTests() => JSInterop.Mode = JSRuntimeMode.Loose;

    [Fact]
    public void Without_photos_it_says_what_they_are_for() => Assert.Contains("No photos yet.", Show([]).Markup, StringComparison.Ordinal);

    [Fact]
    public void A_photo_is_called_by_its_caption_or_its_number()
    {
        IRenderedComponent<PhotosPanel> panel = Show([OnTheLine, Folded]);

        Assert.Equal(["on the line", "photo 2"], panel.FindAll("img").Select(image => image.GetAttribute("alt")));
        Assert.True(panel.Find(".photo-item.chosen input[type=radio]").HasAttribute("checked"));
    }

    [Fact]
    public void The_card_gets_a_photo_or_the_chart_and_captions_are_told()
    {
        IRenderedComponent<PhotosPanel> panel = Show([OnTheLine, Folded]);

        panel.FindAll("input[type=radio]")[1].Change(true);
        panel.FindAll("input[type=radio]")[2].Change(true);
        panel.Find($"#caption-{Folded.Id}").Change("folded");
        panel.Button("Remove: on the line").Click();

        Assert.Equal([$"choose {Folded.Id}", "choose ", $"say {Folded.Id} folded", "remove on the line"], done);
    }

    [Fact]
    public void Each_bad_file_is_told_by_name_at_the_field_and_the_good_ones_are_taken()
    {
        IRenderedComponent<PhotosPanel> panel = Show([]);

        panel.FindComponent<InputFile>().UploadFiles(
            InputFileContent.CreateFromBinary(Picture, "cloth.png"),
            InputFileContent.CreateFromText("<svg onload='alert(1)'/>", "drawing.svg"),
            InputFileContent.CreateFromBinary(Picture[..40], "half.png"));

        panel.WaitForAssertion(() => Assert.Equal(2, panel.FindAll(".wrong-one").Count));
        Assert.StartsWith("drawing.svg: This file is no photo", panel.FindAll(".wrong-one")[0].TextContent, StringComparison.Ordinal);
        Assert.StartsWith("half.png: ", panel.FindAll(".wrong-one")[1].TextContent, StringComparison.Ordinal);
        Assert.Equal("true", panel.Find("#add-photos").GetAttribute("aria-invalid"));
        Assert.Contains("photos-wrong", panel.Find("#add-photos").GetAttribute("aria-describedby"), StringComparison.Ordinal);
        Assert.Single(added);
    }

    [Fact]
    public void What_the_studio_refuses_is_told_at_the_field_too()
    {
        answer = Outcome.Refused(PhotoReader.Field, "A design can have 24 photos.");
        IRenderedComponent<PhotosPanel> panel = Show([OnTheLine]);

        panel.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(Picture, "cloth.png"));

        panel.WaitForAssertion(() => Assert.Equal("cloth.png: A design can have 24 photos.", panel.Find(".wrong-one").TextContent));
    }

    /// <summary>One grey pixel, as PNG writes it (RFC 2083).</summary>
    internal static byte[] Picture { get; } = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==");

    private IRenderedComponent<PhotosPanel> Show(IReadOnlyList<KeptDesignPhoto> photos) => Render<PhotosPanel>(with => with
        .Add(panel => panel.Photos, photos)
        .Add(panel => panel.Add, photo =>
        {
            added.Add(photo);
            return Task.FromResult(answer);
        })
        .Add(panel => panel.Say, said => done.Add($"say {said.Photo} {said.Caption}"))
        .Add(panel => panel.Choose, id => done.Add($"choose {id}"))
        .Add(panel => panel.Remove, photo => done.Add($"remove {photo.Caption}")));
}
