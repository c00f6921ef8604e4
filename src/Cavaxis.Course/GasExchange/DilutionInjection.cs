using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>The two areas that one injection of indicator gave.</summary>
public sealed record DilutionInjection
{
    /// <summary>An injection.</summary>
    /// <param name="firstPass">Area on the return side, where all of the indicator passes; its interval above nought.</param>
    /// <param name="secondPass">Area on the drainage side of what came straight back, in the same unit at the same flow.</param>
    /// <exception cref="InputFaultException">There is no first passage.</exception>
    public DilutionInjection(Estimate firstPass, Estimate secondPass)
    {
        ArgumentNullException.ThrowIfNull(firstPass);
        ArgumentNullException.ThrowIfNull(secondPass);
        if (!(firstPass.Low > 0))
        {
            throw new InputFaultException(new InputFault(
                FaultCode.OutOfRange, nameof(firstPass), FormattableString.Invariant($"{firstPass.Value:G4} ({firstPass.Low:G4} to {firstPass.High:G4})"), "an area above nought with its whole interval", "Inject again: the indicator was not seen on the return side."));
        }

        (FirstPass, SecondPass) = (firstPass, secondPass);
    }

    /// <summary>Area on the return side.</summary>
    public Estimate FirstPass { get; }

    /// <summary>Area on the drainage side.</summary>
    public Estimate SecondPass { get; }
}
