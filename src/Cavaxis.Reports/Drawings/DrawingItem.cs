namespace Cavaxis.Reports.Drawings;

/// <summary>One thing on the paper. Items are painted in order, later ones over earlier ones.</summary>
public abstract record DrawingItem
{
    private protected DrawingItem()
    {
    }
}
