using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using PatternStudio.Studio.Materials;
using PatternStudio.Web.Features.SwatchBook;
using PatternStudio.Web.Tests.Desk;

namespace PatternStudio.Web.Tests.SwatchBook;

/// <summary>A swatch's photo: what is none, or none that can be drawn, is told at the field and changes nothing.</summary>
public sealed class PhotoFieldTests : PageTest
{
    private readonly List<PhotoChange?> changes = [];

    public PhotoFieldTests() => JSInterop.Mode = JSRuntimeMode.Loose;

    public static TheoryData<byte[], string> NoPhotos => new()
    {
        { "<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"u8.ToArray(), "This file is no photo that can be read here." },
        { [], "This file is no photo that can be read here." },
        { "PK\u0003\u0004 not a picture but a zip"u8.ToArray(), "This file is no photo that can be read here." },
        { PhotosPanelTests.Picture[..40], "" },
        { new byte[PhotoReader.MostBytes + 1], "The photo has more than 25 MB." },
    };

    [Theory]
    [MemberData(nameof(NoPhotos), DisableDiscoveryEnumeration = true)]
    public void What_is_no_photo_is_told_at_the_field(byte[] file, string says)
    {
        IRenderedComponent<PhotoField> field = Show();
        field.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(file, "photo.jpg"));

        field.WaitForAssertion(() => Assert.StartsWith(says, field.Find(".wrong[role=alert]").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        Assert.Empty(changes);
    }

    [Fact]
    public void A_photo_is_taken_and_the_complaint_about_the_one_before_is_gone()
    {
        IRenderedComponent<PhotoField> field = Show();
        field.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromText("no photo", "a.jpg"));
        field.WaitForAssertion(() => Assert.NotEmpty(field.FindAll(".wrong")));
        field.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(PhotosPanelTests.Picture, "b.png"));

        field.WaitForAssertion(() => Assert.Single(changes));
        Assert.Empty(field.FindAll(".wrong"));
    }

    private IRenderedComponent<PhotoField> Show() => Render<PhotoField>(with => with.Add(field => field.ChangeChanged, change => changes.Add(change)));
}
