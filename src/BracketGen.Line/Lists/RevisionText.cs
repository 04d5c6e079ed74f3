using System.Text;
using BracketGen.Line.Combinations;
using BracketGen.Line.Numbering;
using BracketGen.Profiles.Forms;

namespace BracketGen.Line.Lists;

/// <summary>The register as people read it: every part with its revisions, and what was changed.</summary>
public static class RevisionText
{
    /// <summary>The text's bytes, UTF-8.</summary>
    public static byte[] Write(Register register)
    {
        var text = new StringBuilder($"Revisions of {register.Family}\n");
        foreach (var part in register.Revisions.GroupBy(r => r.Combination))
        {
            text.Append($"\n{part.First().PartNumber}: {part.First().Names}\n");
            foreach (var revision in part)
            {
                Append(text, revision, "  ");
            }
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    /// <summary>What is different in one revision, or what the part is where it is the first; a line each.</summary>
    public static IEnumerable<string> Lines(RegisteredRevision revision) => revision.Differences.IsEmpty
        ? revision.Facts.Select(f => $"{f.Key}: {f.Value}")
        : revision.Differences;

    private static void Append(StringBuilder text, RegisteredRevision revision, string indent)
    {
        text.Append($"{indent}revision {revision.Revision}\n");
        foreach (var line in Lines(revision))
        {
            text.Append($"{indent}  {line}\n");
        }
    }
}
