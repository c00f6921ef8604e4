namespace Cavaxis.Arteries.Boundaries;

/// <summary>Blood that enters from outside: what it carries.</summary>
public interface ITracerSource
{
    /// <summary>Concentration of a tracer in the blood that enters. Must not allocate.</summary>
    /// <param name="tracer">Index of the tracer.</param>
    /// <param name="time">Middle of the step, s.</param>
    /// <returns>Concentration, in the unit that the caller has chosen for that tracer.</returns>
    double Concentration(int tracer, double time);
}
