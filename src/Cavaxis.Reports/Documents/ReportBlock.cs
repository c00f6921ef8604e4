namespace Cavaxis.Reports.Documents;

/// <summary>One part of a report, from top to bottom.</summary>
public abstract record ReportBlock
{
    private protected ReportBlock()
    {
    }
}
