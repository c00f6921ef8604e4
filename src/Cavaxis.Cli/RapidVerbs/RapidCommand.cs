using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Planning.Case;
using Cavaxis.Planning.Rapid;
using Cavaxis.Planning.Rules;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.RapidVerbs;

/// <summary>
/// <c>rapid</c>: what can be said within minutes. Ends with 1 where no plan is possible or the plan carries a hard stop, as <c>plan</c> does.
/// Criteria never change how it ends: that would be a verdict.
/// </summary>
/// <param name="output">Where results go.</param>
public sealed class RapidCommand(CommandOutput output) : Command<RapidSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, RapidSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        RapidCriteria criteria = settings.Criteria is null
            ? RapidCriteriaReader.BuiltIn
            : RapidCriteriaReader.Read(InputFile.ReadAll(settings.Criteria, CaseFileReader.LargestFileBytes), settings.Criteria);
        RapidInput input = RapidOptionsReader.Read(settings, criteria);
        RuleBook rules = settings.Rules is null
            ? RuleBookReader.BuiltIn
            : RuleBookReader.Read(InputFile.ReadAll(settings.Rules, CaseFileReader.LargestFileBytes), settings.Rules);
        RapidResult result = RapidAssessment.Of(input, criteria, CatalogueLoader.Load(settings.Catalogues), rules);
        if (settings.Json)
        {
            output.Json(result);
        }
        else
        {
            new RapidText(output).Write(result);
        }

        return (int)(result.Plan is null or { HasStop: true } ? ExitCode.StopFound : ExitCode.Done);
    }
}
