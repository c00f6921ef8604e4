using Cavaxis.Circulation.Axis;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Planning.Plans;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Running;

/// <summary>Gathers the numbers of one patient while the sections of a case are read.</summary>
internal sealed class ParameterBook
{
    private readonly Dictionary<CirculationParameter, Origin> origins = [];
    private readonly List<MissingInput> assumed = [];
    private readonly List<string> notChecked = [];

    /// <summary>Begins with the table at a body mass.</summary>
    /// <param name="massKg">Body mass.</param>
    public ParameterBook(double massKg) => Parameters = CirculationParameters.ForMass(massKg);

    /// <summary>The numbers so far.</summary>
    public CirculationParameters Parameters { get; private set; }

    /// <summary>How they came to be.</summary>
    public IReadOnlyDictionary<CirculationParameter, Origin> Origins => origins;

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<MissingInput> Assumed => assumed;

    /// <summary>What is not used.</summary>
    public IReadOnlyList<string> NotChecked => notChecked;

    /// <summary>Body mass over that of the table's adult.</summary>
    public double MassRatio => Parameters.MassKg / ParameterTable.ReferenceMassKg;

    /// <summary>Takes a number that the case gives. Outside the model's range it is refused, with the field of the case.</summary>
    /// <param name="parameter">Which.</param>
    /// <param name="value">Value.</param>
    /// <param name="field">Field of the case file.</param>
    /// <param name="origin">How it came to be.</param>
    /// <exception cref="InputFaultException">The value lies outside the range of the model.</exception>
    public void Take(CirculationParameter parameter, double value, string field, Origin origin = Origin.Measured)
    {
        (double low, double high) = ParameterTable.Bounds(parameter, Parameters.MassKg);
        Require.InRange(value, low, high, field, $"The circulation is not described beyond this range ({ParameterTable.Of(parameter).Name}: {ParameterTable.Of(parameter).Meaning})");
        Parameters = Parameters.With(parameter, value);
        origins[parameter] = origin;
    }

    /// <summary>Takes a first guess that calibration may move: kept inside the model's range.</summary>
    /// <param name="parameter">Which.</param>
    /// <param name="value">Value.</param>
    /// <param name="origin">How it came to be.</param>
    public void Guess(CirculationParameter parameter, double value, Origin origin = Origin.Calculated)
    {
        (double low, double high) = ParameterTable.Bounds(parameter, Parameters.MassKg);
        double margin = 1e-3 * (high - low);
        Parameters = Parameters.With(parameter, Math.Clamp(value, low + margin, high - margin));
        origins[parameter] = origin;
    }

    /// <summary>Sets where blood is drained and returned.</summary>
    /// <param name="ports">Shares along the axis.</param>
    public void Take(AxisPorts ports) => Parameters = Parameters.With(ports);

    /// <summary>Records an assumption.</summary>
    /// <param name="field">Field that is missing.</param>
    /// <param name="used">What was used instead.</param>
    /// <param name="matters">What it changes.</param>
    public void Assume(string field, string used, string matters) => assumed.Add(new MissingInput(field, used, matters));

    /// <summary>Takes over an assumption made elsewhere.</summary>
    /// <param name="missing">The assumption.</param>
    public void Assume(MissingInput missing) => assumed.Add(missing);

    /// <summary>Records what the circulation leaves out.</summary>
    /// <param name="sentence">One sentence.</param>
    public void Leave(string sentence) => notChecked.Add(sentence);
}
