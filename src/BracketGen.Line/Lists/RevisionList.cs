using System.Text;
using BracketGen.Line.Numbering;
using BracketGen.Words.Line;

namespace BracketGen.Line.Lists;

/// <summary>The register as people read it: every part with its revisions, and what changed.</summary>
public static class RevisionList
{
    /// <summary>The text's bytes, UTF-8.</summary>
    public static byte[] Write(Register register)
    {
        var text = new StringBuilder(RevisionText.Head(register.Family)).Append('\n');
        foreach (var part in register.Revisions.GroupBy(r => r.Combination))
        {
            text.Append('\n').Append(RevisionText.Part(part.First().PartNumber, part.First().Names)).Append('\n');
            foreach (var revision in part)
            {
                text.Append("  ").Append(RevisionText.Revision(revision.Revision)).Append('\n');
                foreach (var line in Lines(revision))
                {
                    text.Append("    ").Append(line).Append('\n');
                }
            }
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }

    // What changed, or what the part is if it is the first.
    private static IEnumerable<string> Lines(RegisteredRevision revision) =>
        revision.Differences.IsEmpty ? revision.Facts.Select(f => RevisionText.Fact(f.Key, f.Value)) : revision.Differences;
}
