using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Cavaxis.Mechanics.Matrices;

/// <summary>
/// A symmetric matrix whose entries lie within ten places of the diagonal, which is what a chain of nodes with three
/// coordinates and one angle has. Lower rows are stored one after the other, ten places and the diagonal, then room for the vectors that work on
/// them to run over; what stands there is never used. Factorised from the last row to the first as U D Uᵀ, U unit upper, without exchange of rows: the signs of D count
/// the negative modes (Sylvester's law of inertia). A row's ten places are then the column of U above its pivot.
/// </summary>
internal sealed class BandMatrix
{
    /// <summary>Places to the left of the diagonal that may hold an entry.</summary>
    public const int HalfWidth = 10;

    private const int Stride = 16;
    private const int Lanes = 4;

    private double[] entries = [];
    private double[] factor = [];
    private double[] inverses = [];
    private double[] work = [];
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
            inverses = new double[size];
            work = new double[size + HalfWidth + Lanes];
        }

        Array.Clear(entries, 0, size * Stride);
    }

    /// <summary>Adds to an entry on or below the diagonal.</summary>
    public void Add(int row, int column, double value) => entries[(row * Stride) + HalfWidth - row + column] += value;

    /// <summary>Adds to four neighbouring entries of a row; those right of the diagonal are lost.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(int row, int column, Vector256<double> values)
    {
        Span<double> at = entries.AsSpan((row * Stride) + HalfWidth - row + column, Lanes);
        (Vector256.Create<double>(at) + values).CopyTo(at);
    }

    /// <summary>An entry.</summary>
    public double this[int row, int column] => Math.Abs(row - column) > HalfWidth
        ? 0
        : entries[(Math.Max(row, column) * Stride) + HalfWidth - Math.Abs(row - column)];

    /// <summary>Takes a variable out: its row and column become those of the identity.</summary>
    public void Fix(int index)
    {
        Array.Clear(entries, index * Stride, HalfWidth);
        entries[(index * Stride) + HalfWidth] = 1;
        for (int row = index + 1; row <= Math.Min(Size - 1, index + HalfWidth); row++)
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
    /// <param name="direction">Filled: Uᵀ times it is one at that pivot and zero at all rows behind.</param>
    public void NegativeDirection(double[] direction)
    {
        Array.Clear(direction, 0, Size);
        direction[stoppedAt] = 1;
        for (int i = stoppedAt + 1; i < Size; i++)
        {
            int first = Math.Max(stoppedAt, i - HalfWidth);
            double sum = 0;
            for (int k = first; k < i; k++)
            {
                sum += factor[(i * Stride) + HalfWidth - i + k] * direction[k];
            }

            direction[i] = -sum;
        }
    }

    /// <summary>Solves with the last factors, in place.</summary>
    public void Solve(double[] vector)
    {
        // Places before the first row stand for columns that no row has: their factors are zero.
        Array.Clear(work, 0, HalfWidth);
        Array.Copy(vector, 0, work, HalfWidth, Size);
        for (int i = Size - 1; i >= 0; i--)
        {
            double value = work[i + HalfWidth];
            ReadOnlySpan<double> column = factor.AsSpan(i * Stride, HalfWidth);
            Span<double> above = work.AsSpan(i, HalfWidth);
            for (int k = 0; k < 8; k += Lanes)
            {
                Span<double> at = above.Slice(k, Lanes);
                (Vector256.Create<double>(at) - (value * Vector256.Create(column.Slice(k, Lanes)))).CopyTo(at);
            }

            above[8] -= column[8] * value;
            above[9] -= column[9] * value;
        }

        for (int i = 0; i < Size; i++)
        {
            ReadOnlySpan<double> column = factor.AsSpan(i * Stride, HalfWidth);
            ReadOnlySpan<double> above = work.AsSpan(i, HalfWidth);
            Vector256<double> products = (Vector256.Create(column[..Lanes]) * Vector256.Create(above[..Lanes]))
                + (Vector256.Create(column.Slice(Lanes, Lanes)) * Vector256.Create(above.Slice(Lanes, Lanes)));
            double sum = Vector256.Sum(products) + (column[8] * above[8]) + (column[9] * above[9]);
            work[i + HalfWidth] = (work[i + HalfWidth] * inverses[i]) - sum;
            vector[i] = work[i + HalfWidth];
        }
    }

    private int Factorise(double shift, double angleShift, bool stopAtNegative)
    {
        int negative = 0;
        Array.Copy(entries, factor, Size * Stride);
        for (int i = Size - 1; i >= 0; i--)
        {
            Span<double> row = factor.AsSpan(i * Stride, Stride);
            double added = (i & 3) == 3 ? angleShift : shift;
            double pivot = row[HalfWidth] + added;
            if (!(pivot > 1e-13 * Math.Abs(entries[(i * Stride) + HalfWidth] + added)))
            {
                negative++;
                if (stopAtNegative)
                {
                    stoppedAt = i;
                    return negative;
                }
            }

            double inverse = 1 / pivot;
            inverses[i] = inverse;
            for (int m = 1; m <= Math.Min(HalfWidth, i); m++)
            {
                double scaled = row[HalfWidth - m] * inverse;
                if (scaled == 0)
                {
                    continue;
                }

                // The row that lies m above, from the first column of this one to its own diagonal.
                Span<double> above = factor.AsSpan(((i - m) * Stride) + m, Stride - m);
                for (int k = 0; k <= HalfWidth - m; k += Lanes)
                {
                    Span<double> at = above.Slice(k, Lanes);
                    (Vector256.Create<double>(at) - (scaled * Vector256.Create<double>(row.Slice(k, Lanes)))).CopyTo(at);
                }
            }

            for (int k = 0; k < HalfWidth; k++)
            {
                row[k] *= inverse;
            }
        }

        return negative;
    }
}
