using Cavaxis.Imaging.Measurement;

namespace Cavaxis.Imaging.Doppler;

/// <summary>What an envelope says about the flow.</summary>
/// <param name="VelocityTimeIntegral">Mean integral of a beat, cm.</param>
/// <param name="Peak">Mean of the highest speeds of the beats, cm/s.</param>
/// <param name="Mean">Integral over the time of the beats, cm/s.</param>
/// <param name="Rate">Beats a minute; null where a single beat was given by hand, whose length need not be that of a beat.</param>
/// <param name="Beats">Number of beats.</param>
public sealed record FlowReading(ImageMeasurement VelocityTimeIntegral, ImageMeasurement Peak, ImageMeasurement Mean, ImageMeasurement? Rate, int Beats);
