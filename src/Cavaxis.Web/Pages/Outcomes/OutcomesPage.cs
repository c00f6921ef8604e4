using System.Globalization;
using Cavaxis.Bedside.Programmes;
using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Patients;
using Cavaxis.Web.Record;
using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Pages.Outcomes;

/// <summary>Outcomes of a programme. Every course is read once, when the window stands; what takes longer than a second tells how far it is.</summary>
public sealed partial class OutcomesPage : ComponentBase, IDisposable
{
    private static readonly TimeSpan QuietFor = TimeSpan.FromSeconds(1);

    private readonly CancellationTokenSource leaving = new();
    private readonly CusumAsk ask = new();
    private IReadOnlyList<string> programmes = [];
    private string programme = string.Empty;
    private ProgrammeReading? reading;
    private ProgrammeOutcomes? outcomes;
    private CusumChart? chart;
    private IReadOnlyList<InputFault> trouble = [];
    private IReadOnlyList<InputFault> askTrouble = [];
    private string drawnAsk = string.Empty;
    private string progress = string.Empty;
    private bool refused;

    /// <summary>The record.</summary>
    [Inject]
    public WorkspaceRecord Record { get; private set; } = null!;

    /// <summary>Who is here.</summary>
    [Inject]
    public IPersonHere Here { get; private set; } = null!;

    private OutcomeShare Survival => outcomes!.Shares.First(static s => s.Definition.Kind == CountedOutcome.SurvivedToDischarge);

    private string Left => OutcomeWords.LeftOut(reading!) is { Count: > 0 } left ? $"Not counted: {string.Join("; ", left)}." : reading!.Courses.Count == 0 ? "There is no patient in it." : "Every course is counted.";

    /// <summary>Ends a reading that goes on.</summary>
    public void Dispose()
    {
        leaving.Cancel();
        leaving.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => await TryAsync(async () =>
    {
        programmes = ProgrammeCourses.Of(await Here.NowAsync());
        (programme, refused) = (programmes.Count > 0 ? programmes[0] : string.Empty, programmes.Count == 0);
    });

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        // Not while the page is drawn for the first answer: every course would be read, and noted as read, twice.
        if (firstRender && programme.Length > 0)
        {
            await ReadAsync();
            StateHasChanged();
        }
    }

    private async Task ChooseAsync(string chosen)
    {
        programme = chosen;
        await ReadAsync();
    }

    private Task ReadAsync() => TryAsync(async () =>
    {
        (reading, outcomes, chart, askTrouble) = (null, null, null, []);
        Person person = await Here.NowAsync();
        string asked = programme;
        Telling telling = new(Tell, QuietFor);
        PatientAnswer<ProgrammeReading> answer = await Task.Run(() => Record.Programmes.ReadAsync(person, asked, telling, leaving.Token), leaving.Token);
        progress = string.Empty;
        if (answer.AuditFault is { } unkept)
        {
            trouble = [new InputFault(FaultCode.UnreadableFile, "audit", unkept.Found, "room for the note that these records were read", unkept.Remedy)];
        }

        reading = answer.Value ?? throw RecordFault.Of(answer.Decision, asked);
        outcomes = ProgrammeReview.Of(reading.Cases);
        chart = ask.Of(reading.Cases);
    });

    private void Tell(ProgrammeProgress at) => _ = InvokeAsync(() =>
    {
        progress = reading is null ? string.Create(CultureInfo.InvariantCulture, $"Reading course {at.Read} of {at.Of}…") : string.Empty;
        StateHasChanged();
    });

    private void Draw()
    {
        try
        {
            askTrouble = [];
            chart = ask.Of(reading!.Cases);
            drawnAsk = ask.RiskPercent.Length > 0 ? $"Expected risk of each case: {ask.RiskPercent.Trim()} %, assumed." : string.Empty;
        }
        catch (InputFaultException fault)
        {
            askTrouble = fault.Faults;
        }
    }

    private async Task TryAsync(Func<Task> work)
    {
        try
        {
            trouble = [];
            await RecordFault.InAsync(async () =>
            {
                await work();
                return true;
            });
        }
        catch (InputFaultException fault)
        {
            trouble = fault.Faults;
        }
        catch (OperationCanceledException)
        {
            // The window was left.
        }
    }
}
