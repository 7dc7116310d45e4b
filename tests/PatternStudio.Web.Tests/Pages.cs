using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;

namespace PatternStudio.Web.Tests;

/// <summary>Finds parts of a page as people do: by what is written on them.</summary>
internal static class Pages
{
    /// <summary>The button with these words, or with this label for screen readers.</summary>
    public static IElement Button<T>(this IRenderedComponent<T> page, string name) where T : IComponent =>
        page.FindAll("button").Single(button => (button.GetAttribute("aria-label") ?? button.TextContent.Trim()) == name);

    /// <summary>The input with this label.</summary>
    public static IElement Field<T>(this IRenderedComponent<T> page, string label) where T : IComponent
    {
        IElement found = page.FindAll("label").Single(element => element.TextContent.Trim() == label);
        return page.Find($"#{found.GetAttribute("for")}");
    }

    /// <summary>What the page says is wrong with an input; null for nothing.</summary>
    public static string? WrongWith<T>(this IRenderedComponent<T> page, string label) where T : IComponent
    {
        IElement field = page.Field(label);
        return field.GetAttribute("aria-invalid") == "true"
            ? page.Find($"#{field.GetAttribute("aria-describedby")!.Split(' ')[0]}").TextContent
            : null;
    }

    /// <summary>The text as read: part by part, white space drawn together.</summary>
    public static string Reads(this IElement element) =>
        string.Join(' ', element.Descendants<IText>().SelectMany(text => text.Data.Split([' ', '\n', '\u00a0'], StringSplitOptions.RemoveEmptyEntries)));
}
