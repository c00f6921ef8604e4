using Cavaxis.Reports.Drawings;
using CsCheck;

namespace Cavaxis.Reports.Tests.Drawings;

public class LabelStackTests
{
    private static readonly Gen<(double Wanted, double Size)[]> Labels =
        Gen.Select(Gen.Double[0, 100], Gen.Double[1, 12]).Array[1, 14];

    [Fact]
    public void No_two_labels_overlap_and_all_stay_within_bounds_where_they_fit() => Labels.Sample(labels =>
    {
        double high = Math.Max(100, labels.Sum(l => l.Size));
        double[] placed = LabelStack.Place([.. labels.Select(l => l.Wanted)], [.. labels.Select(l => l.Size)], 0, high);
        for (int i = 0; i < labels.Length; i++)
        {
            Assert.True(placed[i] - (labels[i].Size / 2) >= -1e-9 && placed[i] + (labels[i].Size / 2) <= high + 1e-9);
            for (int j = i + 1; j < labels.Length; j++)
            {
                Assert.True(Math.Abs(placed[i] - placed[j]) >= ((labels[i].Size + labels[j].Size) / 2) - 1e-9);
            }
        }
    });

    [Fact]
    public void Labels_keep_the_order_of_the_things_they_belong_to() => Labels.Sample(labels =>
    {
        double[] placed = LabelStack.Place([.. labels.Select(l => l.Wanted)], [.. labels.Select(l => l.Size)], 0, 300);
        for (int i = 0; i < labels.Length; i++)
        {
            for (int j = 0; j < labels.Length; j++)
            {
                Assert.False(labels[i].Wanted < labels[j].Wanted && placed[i] > placed[j]);
            }
        }
    });

    [Fact]
    public void Labels_with_room_lie_where_they_belong()
    {
        double[] placed = LabelStack.Place([50, 10, 30], [8, 8, 8], 0, 100);
        Assert.Equal([50, 10, 30], placed);
    }

    [Fact]
    public void Two_labels_for_one_place_part_evenly()
    {
        // Least squares by hand: both must move by half a label.
        double[] placed = LabelStack.Place([50, 50], [10, 10], 0, 100);
        Assert.Equal([45, 55], placed);
    }

    [Fact]
    public void No_small_move_of_one_label_brings_the_whole_nearer() => Labels.Sample(labels =>
    {
        double[] wanted = [.. labels.Select(l => l.Wanted)];
        double[] sizes = [.. labels.Select(l => l.Size)];
        double[] placed = LabelStack.Place(wanted, sizes, 0, 300);
        double Cost(double[] at) => at.Zip(wanted, (a, w) => (a - w) * (a - w)).Sum();
        double best = Cost(placed);
        for (int i = 0; i < placed.Length; i++)
        {
            foreach (double step in new[] { -0.01, 0.01 })
            {
                double[] moved = [.. placed];
                moved[i] += step;
                bool allowed = moved[i] - (sizes[i] / 2) >= 0 && Enumerable.Range(0, moved.Length)
                    .All(j => j == i || Math.Abs(moved[i] - moved[j]) >= (sizes[i] + sizes[j]) / 2);
                Assert.True(!allowed || Cost(moved) >= best - 1e-9);
            }
        }
    });
}
