namespace BracketGen.Drawing.Solid.Step;

/// <summary>What a file says of the application protocol that it follows.</summary>
/// <param name="Application">What the protocol is for: application_context.application.</param>
/// <param name="Name">Name of its schema: application_interpreted_model_schema_name.</param>
/// <param name="Year">Year in which it was published.</param>
/// <param name="Identifier">Schema and object identifier for the header.</param>
/// <remarks>
/// AP242: the name is the same in all editions and the object identifier of the first one is { 1 0 10303 442 1 1 4 } (STEP Tools, notes on AP242 edition 3). Every
/// edition keeps what the first one has, so that one reads on. Application, name and year: as the files have them that NIST's STEP File Analyzer and Viewer writes.
/// </remarks>
internal sealed record StepProtocol(string Application, string Name, int Year, string Identifier)
{
    private static readonly StepProtocol Ap214 = new(
        "core data for automotive mechanical design processes", "automotive_design", 2000, "AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }");

    private static readonly StepProtocol Ap242 = new(
        "managed model based 3d engineering", "ap242_managed_model_based_3d_engineering", 2014,
        "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }");

    /// <summary>The protocol of <paramref name="schema"/>.</summary>
    public static StepProtocol Of(StepSchema schema) => schema switch
    {
        StepSchema.Ap214 => Ap214,
        StepSchema.Ap242 => Ap242,
        _ => throw new ArgumentOutOfRangeException(nameof(schema), schema, "No such schema."),
    };
}
