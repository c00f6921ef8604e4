using System.Collections.Immutable;

namespace Cavaxis.Arteries.Beats;

/// <summary>Shares of membrane blood over one beat at equal steps of time.</summary>
/// <param name="Share">In the middle of each segment.</param>
/// <param name="EndShare">At the end of each segment.</param>
/// <param name="AortaShare">Along the aorta.</param>
internal sealed record ShareSamples(ImmutableArray<double[]> Share, ImmutableArray<double[]> EndShare, ImmutableArray<double[]> AortaShare);
