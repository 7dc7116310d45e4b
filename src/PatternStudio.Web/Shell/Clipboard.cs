using Microsoft.JSInterop;

namespace PatternStudio.Web.Shell;

/// <summary>The clipboard of whoever is looking.</summary>
internal static class Clipboard
{
    /// <summary>Copies a text. False where the browser does not let this page: it gives the clipboard to secure pages only.</summary>
    public static async Task<bool> CopyAsync(this IJSRuntime browser, string text)
    {
        try
        {
            await browser.InvokeVoidAsync("navigator.clipboard.writeText", text);
            return true;
        }
        catch (JSException)
        {
            return false;
        }
    }
}
