namespace BracketGen.Drawing.Sheet;

/// <summary>What a PDF file says about itself.</summary>
/// <param name="Title">Title of the document.</param>
/// <param name="Author">Who issues it.</param>
/// <param name="Date">Date of issue: the only date in the file, so that the same input gives the same bytes on any day.</param>
public sealed record PdfInfo(string Title, string Author, DateOnly Date);
