using Cavaxis.Mechanics.Insertion;

namespace Cavaxis.Mechanics.Tests.Insertion;

/// <summary>Invented devices.</summary>
internal static class Kits
{
    /// <summary>A floppy tip of 30 mm and a taper before the body.</summary>
    public static RodProfile Wire(double bodyNMm2 = 900, double friction = 0.1) => new(
        [new(20, 5, 5, 0.44, 0.44), new(20, 60, 60, 0.44, 0.44), new(1500, bodyNMm2, bodyNMm2, 0.44, 0.44)], friction);

    public static InsertionKit Cannulation(double friction = 0.1) => new(
        Wire(900, friction),
        new RodProfile([new(500, 2500, 2500, 4, 4)], friction),
        new RodProfile([new(40, 300, 300, 0.6, 3.3), new(600, 900, 900, 3.3, 3.3)], friction),
        40);
}
