using System.Reflection;

namespace Cavaxis.Architecture.Tests.Rooms;

/// <summary>A room of the program: its assembly and the rooms it may know.</summary>
/// <param name="Name">Name, as in <c>Cavaxis.Name</c>.</param>
/// <param name="Assembly">Its assembly.</param>
/// <param name="Project">The few rooms that its project file names.</param>
/// <param name="Packages">Packages that its project file names.</param>
public sealed record Room(string Name, Assembly Assembly, IReadOnlyList<string> Project, IReadOnlyList<string> Packages)
{
    /// <summary>All rooms from the ground up: each may know only rooms that stand before it in its chain.</summary>
    public static IReadOnlyList<Room> All { get; } =
    [
        new("Quantities", typeof(Quantities.Estimate).Assembly, [], ["UnitsNet"]),
        new("Blood", typeof(Blood.Oxygen.OxygenContent).Assembly, ["Quantities"], []),
        new("Devices", typeof(Devices.Cannulae.Cannula).Assembly, ["Blood"], ["CsvHelper"]),
        new("Anatomy", typeof(Anatomy.Axis.AxisDimension).Assembly, ["Devices"], []),
        new("Circulation", typeof(Circulation.Simulation.CirculationSimulator).Assembly, ["Anatomy"], ["MathNet.Numerics"]),
        new("Arteries", typeof(Arteries.Network.ArterialNetwork).Assembly, ["Circulation"], []),
        new("Mechanics", typeof(Mechanics.Relaxing.Relaxation).Assembly, ["Anatomy"], []),
        new("Imaging", typeof(Imaging.Frames.ImageFrame).Assembly, ["Anatomy"], []),
        new("Planning", typeof(Planning.Search.Planner).Assembly, ["Arteries", "Circulation", "Imaging", "Mechanics"], []),
        new("Course", typeof(Course.Observations.QuantityTable).Assembly, ["Planning"], ["CsvHelper"]),
        new("Reports", typeof(Reports.Documents.ReportDocument).Assembly, ["Imaging", "Planning"], ["PDFsharp", "SharpGLTF.Core", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies"]),
        new("Validation", typeof(Validation.AllChecks).Assembly, ["Course", "Imaging"], []),
        new("Records", typeof(Records.Store.IEventStore).Assembly, ["Quantities"], ["Microsoft.EntityFrameworkCore.Sqlite", "Npgsql.EntityFrameworkCore.PostgreSQL", "NSec.Cryptography"]),
        new("Dicom", typeof(Dicom.Reading.DicomReader).Assembly, ["Imaging"], []),
        new("Bedside", typeof(Bedside.Stores.RecordPlace).Assembly, ["Course", "Dicom", "Records", "Reports"], ["Hl7.Fhir.R4", "NSec.Cryptography"]),
        new("Cli", typeof(Cli.CavaxisApplication).Assembly, ["Bedside", "Dicom", "Validation"], ["Spectre.Console", "Spectre.Console.Cli"]),
        new("Web", typeof(Web.Questions.Question).Assembly, ["Bedside"], ["Microsoft.Data.Sqlite"]),
    ];

    /// <summary>The rooms that compute: pure, so that the same input gives the same bytes everywhere.</summary>
    public static IReadOnlyList<Room> Engines { get; } = [.. All.Take(10)];

    /// <summary>The room of a name.</summary>
    public static Room Of(string name) => All.Single(room => room.Name == name);

    /// <summary>Every room that this one may know, near or far.</summary>
    public IReadOnlySet<string> MayKnow => Project.SelectMany(static name => Of(name).MayKnow.Append(name)).ToHashSet();

    public override string ToString() => Name;
}
