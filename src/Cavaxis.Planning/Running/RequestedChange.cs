using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Planning.Running;

/// <summary>One number of the model that a person asks to have changed.</summary>
/// <param name="Change">What was asked for.</param>
/// <param name="From">Value before.</param>
/// <param name="To">Value after, inside the range of the model.</param>
public sealed record RequestedChange(ParameterChange Change, double From, double To)
{
    /// <summary>Which number.</summary>
    public CirculationParameter Parameter => Change.Parameter;
}
