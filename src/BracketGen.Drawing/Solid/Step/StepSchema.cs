namespace BracketGen.Drawing.Solid.Step;

/// <summary>The application protocol whose schema a STEP file follows. Shape and properties are the same in both.</summary>
public enum StepSchema
{
    /// <summary>AP214, automotive design (ISO 10303-214): the one that older programs read too.</summary>
    Ap214,

    /// <summary>AP242, managed model-based 3D engineering (ISO 10303-242), first edition: for who asks for it. There is no PMI in it.</summary>
    Ap242,
}
