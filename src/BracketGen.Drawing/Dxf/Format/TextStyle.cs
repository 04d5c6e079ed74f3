namespace BracketGen.Drawing.Dxf.Format;

/// <summary>The one text style, which every file must declare, whether or not a text uses it.</summary>
internal static class TextStyle
{
    public static void Write(GroupCodeWriter groups)
    {
        groups.Real(40, 0);
        groups.Real(41, 1);
        groups.Real(50, 0);
        groups.Integer(71, 0);
        groups.Real(42, 2.5);
        groups.Text(3, "txt");
        groups.Text(4, "");
    }
}
