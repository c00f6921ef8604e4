namespace Cavaxis.EndToEnd.Tests.Programs;

/// <summary>
/// Tests that run the plan verb for something else than the circulation leave it out, which takes most of the time. A test of the circulation
/// asks for it with <see cref="Whole"/>.
/// </summary>
public static class QuickPlan
{
    /// <summary>Stands in the arguments of a test that wants the plan with the circulation; it is taken out before the program sees them.</summary>
    public const string Whole = "(with the circulation)";

    /// <summary>Arguments for the program.</summary>
    public static string[] Of(string[] args) => args switch
    {
        _ when args.Contains(Whole) => [.. args.Where(static a => a != Whole)],
        ["plan", _, ..] when !args.Contains("--help") && !args.Contains("--quick") => [.. args, "--quick"],
        _ => args,
    };
}
