using static Cavaxis.Anatomy.Axis.AxisDimension;

namespace Cavaxis.Anatomy.Conditioning;

/// <summary>The sums behind <see cref="DerivedLength"/>.</summary>
public static class DerivedLengths
{
    /// <summary>The parts of a derived length.</summary>
    /// <param name="length">The length.</param>
    /// <returns>Its parts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a derived length.</exception>
    public static IReadOnlyList<AxisTerm> TermsOf(DerivedLength length) => length switch
    {
        DerivedLength.LeftNeckSkinToScaj => [new(RightNeckSkinToScaj), new(LeftNeckExtra)],
        DerivedLength.RightNeckSkinToIcaj => [new(RightNeckSkinToScaj), new(AtrialSpan)],
        DerivedLength.RightGroinSkinToScaj => [new(RightGroinSkinToIcaj), new(AtrialSpan)],
        DerivedLength.LeftGroinSkinToIcaj => [new(RightGroinSkinToIcaj), new(LeftGroinExtra)],
        DerivedLength.LeftGroinSkinToScaj => [new(RightGroinSkinToIcaj), new(LeftGroinExtra), new(AtrialSpan)],
        DerivedLength.ScajToHepaticVein => [new(AtrialSpan), new(IcajToHepaticVein)],
        DerivedLength.HepaticVeinToRenalVein => [new(IcajToRenalVein), new(IcajToHepaticVein, -1)],
        DerivedLength.InferiorVenaCavaLength => [new(IcajToRenalVein), new(RenalVeinToIliacConfluence)],
        DerivedLength.RightGroinSkinToRenalVein => [new(RightGroinSkinToIcaj), new(IcajToRenalVein, -1)],
        DerivedLength.RightGroinSkinToIliacConfluence =>
            [new(RightGroinSkinToIcaj), new(IcajToRenalVein, -1), new(RenalVeinToIliacConfluence, -1)],
        _ => throw new ArgumentOutOfRangeException(nameof(length), length, "Not a derived length."),
    };
}
