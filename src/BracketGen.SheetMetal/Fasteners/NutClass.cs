namespace BracketGen.SheetMetal.Fasteners;

/// <summary>The strength class of the nut that goes with a class of screws.</summary>
/// <remarks>
/// Proof stress, the lower one where a table has several: ISO 898-2, a hundred times the class (from memory); ISO 3506-2, the class of the screw (from memory); SAE J995: grade 5 109 ksi (fine thread) and grade 8 150 ksi as printed by
/// a dealer's table of the standard, grade 2 80 ksi (fine thread; from memory; 90 ksi coarse as printed); ASTM F594 100 ksi (from memory). Nuts of machine screws have no grade: the tensile strength of SAE J82 60M, 60 ksi, is taken (our judgement, no source).
/// </remarks>
/// <param name="Name">"8"; empty where such nuts have no grade.</param>
/// <param name="Proof">Proof stress (MPa): proof load over the stress area of the thread.</param>
public sealed record NutClass(string Name, double Proof);
