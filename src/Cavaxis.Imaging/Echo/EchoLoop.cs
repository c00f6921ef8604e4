using Cavaxis.Quantities.Faults;

namespace Cavaxis.Imaging.Echo;

/// <summary>A loop of synthetic pictures.</summary>
public static class EchoLoop
{
    /// <summary>Most frames of a loop.</summary>
    public const int MostFrames = 300;

    /// <summary>Makes the frames one after the other.</summary>
    /// <param name="scene">What is looked at, at the first frame.</param>
    /// <param name="plane">Where the probe stands.</param>
    /// <param name="probe">The probe.</param>
    /// <param name="display">How echoes become grey.</param>
    /// <param name="motion">What moves.</param>
    /// <param name="frames">Number of frames, 1 to <see cref="MostFrames"/>.</param>
    /// <param name="done">Told after each frame how many there are; null for no one.</param>
    /// <returns>The frames.</returns>
    /// <exception cref="InputFaultException">The number is outside its bounds.</exception>
    public static IReadOnlyList<EchoFrame> Frames(
        EchoScene scene, ScanPlane plane, Probe probe, EchoDisplay display, SceneMotion motion, int frames, IProgress<int>? done = null)
    {
        ArgumentNullException.ThrowIfNull(motion);
        _ = Require.InRange(frames, 1, MostFrames, "frames", "Ask for fewer frames.");
        List<EchoFrame> all = [];
        for (int i = 0; i < frames; i++)
        {
            (EchoScene now, ScanPlane from) = motion.At(scene, plane, i / motion.FramesPerSecond);
            all.Add(EchoRenderer.Render(now, from, probe, display, i));
            done?.Report(all.Count);
        }

        return all;
    }
}
