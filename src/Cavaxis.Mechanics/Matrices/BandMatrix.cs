namespace Cavaxis.Mechanics.Matrices;

/// <summary>
/// A symmetric matrix whose entries lie within ten places of the diagonal, which is what a chain of nodes with three
/// coordinates and one angle has. Lower rows are stored one after the other, the diagonal last in each.
/// Factorised as L D Lᵀ without exchange of rows: the signs of D count the negative modes (Sylvester's law of inertia).
/// </summary>
internal sealed class BandMatrix
{
    /// <summary>Places to the left of the diagonal that may hold an entry.</summary>
    public const int HalfWidth = 10;

    private const int Stride = HalfWidth + 1;
    private double[] entries = [];
    private double[] factor = [];
    private double[] pivots = [];
    private int stoppedAt;

    /// <summary>Rows.</summary>
    public int Size { get; private set; }

    /// <summary>Empties the matrix for a number of rows; memory is kept.</summary>
    public void Reset(int size)
    {
        Size = size;
        if (entries.Length < size * Stride)
        {
            entries = new double[size * Stride];
            factor = new double[size * Stride];
            pivots = new double[size];
        }

        Array.Clear(entries, 0, size * Stride);
    }

    /// <summary>Adds to an entry on or below the diagonal.</summary>
    public void Add(int row, int column, double value) => entries[(row * Stride) + HalfWidth - row + column] += value;

    /// <summary>An entry.</summary>
    public double this[int row, int column] => Math.Abs(row - column) > HalfWidth
        ? 0
        : entries[(Math.Max(row, column) * Stride) + HalfWidth - Math.Abs(row - column)];

    /// <summary>Takes a variable out: its row and column become those of the identity.</summary>
    public void Fix(int index)
    {
        Array.Clear(entries, index * Stride, HalfWidth);
        entries[(index * Stride) + HalfWidth] = 1;
        for (int row = index + 1; row < Math.Min(Size, index + Stride); row++)
        {
            entries[(row * Stride) + HalfWidth - row + index] = 0;
        }
    }

    /// <summary>Factorises the matrix plus a diagonal, as long as every pivot is clearly positive.</summary>
    /// <param name="shift">Added to the diagonal of coordinates.</param>
    /// <param name="angleShift">Added to the diagonal of angles, every fourth variable.</param>
    /// <returns>False where the sum is not positive definite.</returns>
    public bool TryFactorise(double shift, double angleShift) => Factorise(shift, angleShift, true) == 0;

    /// <summary>Negative eigenvalues of the matrix plus a diagonal.</summary>
    public int NegativeCount(double shift, double angleShift) => Factorise(shift, angleShift, false);

    /// <summary>A direction of negative curvature, where the last factorisation met a pivot that is not positive.</summary>
    /// <param name="direction">Filled: L Lᵀ-conjugate to all rows before that pivot.</param>
    public void NegativeDirection(double[] direction)
    {
        Array.Clear(direction, 0, Size);
        direction[stoppedAt] = 1;
        for (int i = stoppedAt; i >= 0; i--)
        {
            int first = Math.Max(0, i - HalfWidth);
            for (int k = first; k < i; k++)
            {
                direction[k] -= factor[(i * Stride) + HalfWidth - i + k] * direction[i];
            }
        }
    }

    /// <summary>Solves with the last factors, in place.</summary>
    public void Solve(double[] vector)
    {
        for (int i = 0; i < Size; i++)
        {
            int first = Math.Max(0, i - HalfWidth);
            ReadOnlySpan<double> row = factor.AsSpan((i * Stride) + HalfWidth - i + first, i - first);
            double sum = vector[i];
            for (int k = 0; k < row.Length; k++)
            {
                sum -= row[k] * vector[first + k];
            }

            vector[i] = sum;
        }

        for (int i = Size - 1; i >= 0; i--)
        {
            vector[i] /= pivots[i];
        }

        for (int i = Size - 1; i >= 0; i--)
        {
            int first = Math.Max(0, i - HalfWidth);
            ReadOnlySpan<double> row = factor.AsSpan((i * Stride) + HalfWidth - i + first, i - first);
            double value = vector[i];
            for (int k = 0; k < row.Length; k++)
            {
                vector[first + k] -= row[k] * value;
            }
        }
    }

    private int Factorise(double shift, double angleShift, bool stopAtNegative)
    {
        int negative = 0;
        for (int i = 0; i < Size; i++)
        {
            int first = Math.Max(0, i - HalfWidth);
            int home = (i * Stride) + HalfWidth - i;
            double own = entries[home + i] + ((i & 3) == 3 ? angleShift : shift);
            double pivot = own;
            for (int j = first; j < i; j++)
            {
                int start = Math.Max(first, j - HalfWidth);
                ReadOnlySpan<double> above = factor.AsSpan((j * Stride) + HalfWidth - j + start, j - start);
                ReadOnlySpan<double> left = factor.AsSpan(home + start, j - start);
                double sum = entries[home + j];
                for (int k = 0; k < above.Length; k++)
                {
                    sum -= left[k] * above[k];
                }

                factor[home + j] = sum;
            }

            for (int j = first; j < i; j++)
            {
                double scaled = factor[home + j];
                factor[home + j] = scaled / pivots[j];
                pivot -= scaled * factor[home + j];
            }

            if (!(pivot > 1e-13 * Math.Abs(own)))
            {
                negative++;
                if (stopAtNegative)
                {
                    stoppedAt = i;
                    return negative;
                }
            }

            pivots[i] = pivot;
        }

        return negative;
    }
}
