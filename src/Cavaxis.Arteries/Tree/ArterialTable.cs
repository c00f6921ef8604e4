using System.Collections.Immutable;
using Cavaxis.Quantities;

namespace Cavaxis.Arteries.Tree;

/// <summary>The table of an adult's arteries: <c>catalogue/arteries.json</c>, built in, or one that was read.</summary>
/// <param name="Notice">Who made the table, and by which licence it is carried.</param>
/// <param name="Source">Publication.</param>
/// <param name="ElasticModulusPa">Young's modulus of every wall, Pa.</param>
/// <param name="ReferencePressurePa">Pressure at which the radii hold, Pa.</param>
/// <param name="VelocityProfileExponent">Exponent ζ of the velocity profile 1 − (r/R)^ζ.</param>
/// <param name="ReferenceHeightCm">Height of the person of the table, cm.</param>
/// <param name="ReferenceAgeYears">Age of that person, years.</param>
/// <param name="Segments">The segments, each after the one that it springs from.</param>
public sealed record ArterialTable(
    string Notice,
    Source Source,
    double ElasticModulusPa,
    double ReferencePressurePa,
    double VelocityProfileExponent,
    double ReferenceHeightCm,
    double ReferenceAgeYears,
    ImmutableArray<ArterySegment> Segments)
{
    private static readonly Lazy<ArterialTable> Embedded = new(static () =>
    {
        using Stream stream = typeof(ArterialTable).Assembly.GetManifestResourceStream("arteries.json")
            ?? throw new InvalidOperationException("The table of arteries is missing from the assembly.");
        using StreamReader reader = new(stream);
        return ArterialTableReader.Read(reader.ReadToEnd());
    });

    /// <summary>The table that is built in.</summary>
    public static ArterialTable BuiltIn => Embedded.Value;

    /// <summary>Index of a segment.</summary>
    /// <param name="name">Its identifier.</param>
    /// <returns>Its place in the table.</returns>
    /// <exception cref="ArgumentException">There is no such segment.</exception>
    public int IndexOf(string name)
    {
        for (int i = 0; i < Segments.Length; i++)
        {
            if (Segments[i].Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException("The table of arteries has no segment of this name: " + name, nameof(name));
    }
}
