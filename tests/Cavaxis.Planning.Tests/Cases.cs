using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Body;
using Cavaxis.Anatomy.Population;
using Cavaxis.Anatomy.Sampling;
using Cavaxis.Devices.Catalogue;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Rules;
using Cavaxis.Planning.Search;
using Cavaxis.Planning.Tests.Case;

namespace Cavaxis.Planning.Tests;

/// <summary>Cases and runs shared by the tests. Few anatomies: the tests ask for relations, not for digits.</summary>
internal static class Cases
{
    public const int FewAnatomies = 1000;

    public static CaseFile Bare { get; } = new()
    {
        CavaxisCase = 1,
        Title = "Test",
        Invented = true,
        Patient = new PatientSection { AgeYears = 50, Sex = Sex.Male, HeightCm = 175, WeightKg = 78 },
    };

    public static CaseFile For(SupportGoal goal) => Bare with { Support = new SupportSection { Goal = goal } };

    public static CaseFile Demo(string name) =>
        CaseFileReader.Read(File.ReadAllBytes(Path.Combine(RepositoryFolder.Demo, name + ".json")), name);

    public static PlanningResult Plan(CaseFile caseFile, int anatomies = FewAnatomies, ulong seed = 1, int perConfiguration = 2) =>
        Planner.Plan(caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions
        {
            Anatomies = anatomies,
            Seed = seed,
            PlansPerConfiguration = perConfiguration,
        });

    public static PlanningContext Context(CaseFile caseFile, int anatomies = FewAnatomies) =>
        new(caseFile, DeviceCatalogue.BuiltIn, RuleBookReader.BuiltIn, new PlanningOptions { Anatomies = anatomies });

    public static AxisSamples Anatomies(double heightCm, int count = 300, ulong seed = 7, NeckEntry entry = NeckEntry.Unknown) =>
        AxisSampler.Draw(
            PopulationModel.For(new BodyHabitus(45, Sex.Male, heightCm, 24 * heightCm * heightCm * 1e-4), entry), count, seed);

    public static Measurement Measured(double value, double sd) => new(value, sd, true);
}
