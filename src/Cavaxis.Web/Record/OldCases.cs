using System.Text.Json.Nodes;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;
using Cavaxis.Records.Store;
using Cavaxis.Web.Shelf;

namespace Cavaxis.Web.Record;

/// <summary>Brings cases into the record that nobody signed in wrote: those of the earlier store of this workspace, with every version, and the invented ones.</summary>
/// <param name="record">The record.</param>
public sealed class OldCases(WorkspaceRecord record)
{
    /// <summary>What the earlier store's file is called once all of it is in the record.</summary>
    public const string MovedSuffix = ".moved-into-record";

    /// <summary>
    /// Moves the earlier store. Each patient goes in as a whole or not at all, under the same identifier, so that a move that was cut off goes on at the next
    /// start; the old file is kept under another name once every version has been read back.
    /// </summary>
    /// <param name="path">The earlier store's file.</param>
    /// <returns>How many patients were moved; 0 where there is no such file.</returns>
    /// <exception cref="InputFaultException">It cannot be read, or a version came out otherwise than it went in.</exception>
    /// <exception cref="Records.Faults.StoreFaultException">The record cannot be written.</exception>
    public async Task<int> MoveAsync(string path)
    {
        if (!File.Exists(path))
        {
            return 0;
        }

        int moved = 0;
        using (SqliteCaseShelf old = new(path, TimeProvider.System))
        {
            foreach (ShelvedCase patient in (await old.ListAsync()).Reverse())
            {
                List<CaseVersion> versions = [];
                foreach (VersionNote note in (await old.HistoryAsync(patient.Id)).OrderBy(static n => n.Number))
                {
                    versions.Add((await old.ReadAsync(patient.Id, note.Number))!);
                }

                moved += await AddAsync(Identifier.Of(patient.Id), WorkspaceRecord.AtThisMachine.Id, versions) ? 1 : 0;
                await CompareAsync(patient.Id, versions);
            }
        }

        File.Move(path, path + MovedSuffix, overwrite: false);
        return moved;
    }

    /// <summary>Loads the invented cases where the record has no patient at all.</summary>
    /// <returns>How many were loaded.</returns>
    /// <exception cref="Records.Faults.StoreFaultException">The record cannot be written.</exception>
    public async Task<int> LoadDemoAsync()
    {
        if ((await record.Store.StreamsAsync(PatientRecords.Area)).Count > 0)
        {
            return 0;
        }

        // The list shows the last first: load from the end of the alphabet.
        IReadOnlyList<(string Name, string Json)> all = DemoCases.All();
        DateTimeOffset now = record.Clock.GetUtcNow();
        foreach ((string name, string json) in all.Reverse())
        {
            Identifier id = PatientRecords.NewId();
            EventDraft[] course = [.. DemoCourses.Of(name, now).Select(static e => new EventDraft(EventKind.Of(e.Kind.Text), CanonicalJson.Of(e.Json), e.At))];
            DateTimeOffset since = course.Select(static e => e.OccurredAt!.Value.AddHours(-1)).Append(now).Min();
            await AddAsync(id, Audit.Program, [new CaseVersion(id.Text, 1, since, "invented demo case loaded", json)], course);
        }

        return all.Count;
    }

    private async Task<bool> AddAsync(Identifier id, Identifier who, List<CaseVersion> versions, params EventDraft[] course)
    {
        CanonicalJson programme = CanonicalJson.Of(new JsonObject { ["programme"] = WorkspaceRecord.OwnProgramme.Text }.ToJsonString());
        List<EventDraft> drafts = [new(PatientRecords.Admitted, programme, versions[0].SavedAt)];
        for (int i = 0; i < versions.Count; i++)
        {
            // The admission is the first event, so version n stands at n + 1 and was made from the one before it.
            drafts.Add(RecordCaseShelf.Draft(versions[i].Json, versions[i].Change, i == 0 ? null : i + 1, versions[i].SavedAt));
        }

        return await record.Store.AppendAsync(new AppendRequest(CaseVersions.StreamOf(id), 0, who, [.. drafts, .. course])) is Appended;
    }

    private async Task CompareAsync(string id, List<CaseVersion> versions)
    {
        foreach (CaseVersion version in versions)
        {
            CaseVersion? there = await record.Cases.ReadAsync(Identifier.Of(id), version.Number);
            if (there?.Json != version.Json)
            {
                throw new InputFaultException(new InputFault(
                    FaultCode.Contradiction, "earlier store of cases", FormattableString.Invariant($"version {version.Number} of {id} came out otherwise"), "the text that went in",
                    "The earlier file was left as it is; keep a copy of it and report this."));
            }
        }
    }
}
