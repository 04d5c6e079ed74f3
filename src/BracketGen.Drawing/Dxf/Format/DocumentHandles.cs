namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The handles of an R2000 file's fixed objects, which point at each other across sections.</summary>
internal sealed class DocumentHandles
{
    public DocumentHandles(HandleSource source)
    {
        Root = source.Next();
        Groups = source.Next();
        Layouts = source.Next();
        PlotStyles = source.Next();
        NormalPlotStyle = source.Next();
        ModelLayout = source.Next();
        PaperLayout = source.Next();
        BlockRecords = source.Next();
        ModelSpace = source.Next();
        PaperSpace = source.Next();
        StandardTextStyle = source.Next();
    }

    public Handle Root { get; }

    public Handle Groups { get; }

    public Handle Layouts { get; }

    public Handle PlotStyles { get; }

    public Handle NormalPlotStyle { get; }

    public Handle ModelLayout { get; }

    public Handle PaperLayout { get; }

    public Handle BlockRecords { get; }

    public Handle ModelSpace { get; }

    public Handle PaperSpace { get; }

    public Handle StandardTextStyle { get; }
}
