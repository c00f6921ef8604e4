using Cavaxis.Planning.Plans;
using Cavaxis.Planning.Running;

namespace Cavaxis.Cli.Output;

/// <summary>What was assumed, what was not checked, and other lists of sentences.</summary>
/// <param name="output">Where to.</param>
internal sealed class RunningLists(CommandOutput output)
{
    /// <summary>Title, mark of an invented case and caution.</summary>
    public void Head(string title, bool invented, string caution)
    {
        output.Line($"{title}{(invented ? "  [INVENTED CASE]" : string.Empty)}");
        output.Wrapped(string.Empty, caution);
        output.Line();
    }

    /// <summary>Assumptions and limits.</summary>
    public void Patient(RunningPatient patient)
    {
        Sentences("Assumed, because the case does not say", patient.Assumed.Select(static (MissingInput m) => $"{m.Field}: {m.UsedInstead}; matters for {m.Matters}"));
        Sentences("Not checked", patient.NotChecked);
    }

    /// <summary>A list with a title; nothing where it is empty.</summary>
    public void Sentences(string title, IEnumerable<string> sentences)
    {
        string[] all = [.. sentences];
        if (all.Length == 0)
        {
            return;
        }

        output.Line(title);
        foreach (string sentence in all)
        {
            output.Wrapped("  - ", sentence);
        }

        output.Line();
    }
}
