using Cavaxis.Anatomy.Axis;
using Cavaxis.Anatomy.Conditioning;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Anatomy.Tests.Conditioning;

public class AxisMeasurementTests
{
    [Theory]
    [InlineData(double.NaN, 1, "value")]
    [InlineData(2001, 1, "value")]
    [InlineData(60, -1, "sd")]
    [InlineData(60, double.PositiveInfinity, "sd")]
    public void A_number_that_cannot_be_is_refused(double value, double sd, string field)
    {
        InputFaultException thrown = Assert.Throws<InputFaultException>(() => AxisMeasurement.Of(AxisDimension.AtrialSpan, value, sd));

        Assert.Equal(FaultCode.OutOfRange, Assert.Single(thrown.Faults).Code);
        Assert.Equal(field, thrown.Faults[0].Field);
    }

    [Fact]
    public void An_edge_of_the_other_junction_is_a_contradiction()
    {
        InputFaultException above = Assert.Throws<InputFaultException>(
            () => AxisMeasurement.Of(AxisDimension.AtrialSpan, 60, 3, superiorEdge: JunctionEdge.EustachianRim));
        InputFaultException below = Assert.Throws<InputFaultException>(
            () => AxisMeasurement.Of(AxisDimension.AtrialSpan, 60, 3, inferiorEdge: JunctionEdge.CristaTerminalis));

        Assert.Equal(("superiorEdge", FaultCode.Contradiction), (above.Faults[0].Field, above.Faults[0].Code));
        Assert.Equal(("inferiorEdge", FaultCode.Contradiction), (below.Faults[0].Field, below.Faults[0].Code));
    }

    [Fact]
    public void A_sum_names_each_part_once_with_a_weight()
    {
        Assert.Equal(FaultCode.WrongLength, Fault());
        Assert.Equal(FaultCode.Contradiction, Fault(new AxisTerm(AxisDimension.AtrialSpan, 0)));
        Assert.Equal(FaultCode.Contradiction, Fault(new AxisTerm(AxisDimension.AtrialSpan), new AxisTerm(AxisDimension.AtrialSpan)));
        Assert.Equal(FaultCode.Contradiction, Fault(new AxisTerm((AxisDimension)999)));

        static FaultCode Fault(params AxisTerm[] terms) =>
            Assert.Throws<InputFaultException>(() => new AxisMeasurement(terms, 60, 3)).Faults[0].Code;
    }

    [Fact]
    public void No_reading_is_taken_as_exact()
    {
        Assert.Equal(AxisMeasurement.SmallestSd, AxisMeasurement.Of(AxisDimension.AtrialSpan, 60, 0).Sd);
        Assert.Equal(AxisMeasurement.SmallestFractionSd, AxisMeasurement.Of(AxisDimension.TricuspidFraction, 0.6, 0).Sd);
    }

    [Fact]
    public void Only_a_dimension_by_itself_counts_as_single()
    {
        Assert.Equal(AxisDimension.AtrialSpan, AxisMeasurement.Of(AxisDimension.AtrialSpan, 60, 3).Single);
        Assert.Null(AxisMeasurement.Of(DerivedLength.RightGroinSkinToScaj, 500, 5).Single);
        Assert.Null(new AxisMeasurement([new AxisTerm(AxisDimension.AtrialSpan, 2)], 120, 3).Single);
    }

    [Fact]
    public void Every_derived_length_has_parts()
    {
        Assert.All(Enum.GetValues<DerivedLength>(), length => Assert.True(DerivedLengths.TermsOf(length).Count >= 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => DerivedLengths.TermsOf((DerivedLength)99));
    }
}
