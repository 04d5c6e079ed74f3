using BracketGen.Drawing.Report.Html;

namespace BracketGen.Drawing.Report;

/// <summary>The page's head: what it may load, which is nothing, and its style.</summary>
internal static class PageHead
{
    public static void Write(HtmlWriter html, string title)
    {
        using var head = html.Open("head");
        html.Void("meta", ("charset", "utf-8"));

        // No network, no other file; of scripts only the one whose bytes have this sum, so that no text of a profile can become one.
        html.Void("meta", ("http-equiv", "Content-Security-Policy"), ("content",
            $"default-src 'none'; style-src 'unsafe-inline'; script-src '{PageFiles.ScriptSum}'; img-src data:; base-uri 'none'; form-action 'none'"));
        html.Void("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));
        html.Void("meta", ("name", "color-scheme"), ("content", "light dark"));
        html.Void("meta", ("name", "referrer"), ("content", "no-referrer"));
        html.Line("title", title);
        html.Markup($"<style>{PageFiles.Style}</style>\n");
    }
}
