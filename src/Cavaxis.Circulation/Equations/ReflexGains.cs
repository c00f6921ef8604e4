namespace Cavaxis.Circulation.Equations;

/// <summary>
/// Strengths and delays of the arterial baroreflex: largest relative change of each effector at full strength, and first-order
/// lags. Lags after Ursino 1998 (resistance 6 s, elastance 8 s, unstressed volume 20 s, rate 1.5 to 2 s); strengths are an assumption of that order.
/// </summary>
internal static class ReflexGains
{
    public const double WidthMmHg = 25;
    public const double SensorS = 2;
    public const double Rate = 0.35;
    public const double RateS = 2;
    public const double Resistance = 0.4;
    public const double ResistanceS = 6;
    public const double Elastance = 0.35;
    public const double ElastanceS = 8;
    public const double VenousVolume = 0.12;
    public const double VenousVolumeS = 20;
}
