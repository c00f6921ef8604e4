namespace Cavaxis.Reports.Documents;

/// <summary>A column of a table.</summary>
/// <param name="Header">Its heading, with the unit.</param>
/// <param name="Align">How its cells stand.</param>
/// <param name="Weight">Its share of the printed width against the other columns; where all are 0 the contents decide.</param>
public sealed record TableColumn(string Header, ColumnAlign Align = ColumnAlign.Left, double Weight = 0);
