/* The scheme of src/Cavaxis.Arteries written again in C, cell by cell, for a tree with one flow inlet and windkessel ends. Reads what ArteryProgram.cs writes. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static int length, segments, junction_ends, junctions, ends, points;
static double density, drag, courant, period, settle, *perdx, *K, *soft, *offset, *rootref, *rootslope, *kslope, *fK, *fsoft, *foffset;
static double *A, *U, *r, *P, *Q, *rise, *slow, *am, *qm, *hm, *ym, *ap, *qp, *hp, *yp, *fq, *fh;
static int *start, *count, *jfirst, *jface, *jcell, *jsign, *eface, *ecell, *esign;
static double *e1, *e2, *ec, *ep, *wt, *wv;
#define SMALL 100.0
#define LEAST 0.1

static double number(FILE *f) { double x; if (fscanf(f, "%lf", &x) != 1) exit(3); return x; }
static double *array(FILE *f, int n) { double *a = malloc(sizeof(double) * (n > 0 ? n : 1)); for (int i = 0; i < n; i++) a[i] = number(f); return a; }
static int *ints(FILE *f, int n) { int *a = malloc(sizeof(int) * (n > 0 ? n : 1)); for (int i = 0; i < n; i++) a[i] = (int)number(f); return a; }
static double *zeros(int n) { return calloc(n, sizeof(double)); }

static double inflow(double t)
{
    double phase = fmod(t - wt[0], period) + wt[0];
    int low = 0, high = points - 1;
    while (high - low > 1) { int mid = (low + high) / 2; if (wt[mid] <= phase) low = mid; else high = mid; }
    return wv[low] + (phase - wt[low]) / (wt[high] - wt[low]) * (wv[high] - wv[low]);
}

static void limited(double l, double g, double small2, double *s)
{
    double a = l * l + small2, b = g * g + small2;
    *s = (l * b + g * a) / (a + b);
}

static double speed(double a, int face) { return sqrt(a * fK[face] / (2 * density * sqrt(a))); }

static void load(int e, double dt, double t)
{
    int c = ecell[e], f = eface[e], distal = esign[e] > 0;
    double a = distal ? ap[c] : am[c], q = distal ? qp[c] : -qm[c], w = q / a + 4 * speed(a, f), out;
    if (e1[e] < 0) out = -inflow(t + 0.5 * dt);
    else {
        double half = dt / (2 * ec[e]), weight = 1 / (1 + half / e2[e]), p0 = weight * ep[e], res = e1[e] + weight * half, x = a, change;
        for (int i = 0; i < 40; i++) {
            double cc = speed(x, f), u = w - 4 * cc, miss = fK[f] * sqrt(x) + foffset[f] - p0 - res * x * u;
            change = -miss / (density * cc * cc / x - res * (u - cc));
            x += fmax(change, -0.5 * x);
            if (fabs(change) <= 1e-7 * x) break;
        }
        out = x * (w - 4 * speed(x, f));
        double mid = weight * (ep[e] + half * out);
        ep[e] = 2 * mid - ep[e];
    }
    double x = a;
    for (int i = 0; i < 40; i++) {
        double cc = speed(x, f), u = w - 4 * cc, change = (out - x * u) / (u - cc);
        x += fmax(change, -0.5 * x);
        if (fabs(change) <= 1e-7 * x) break;
    }
    double v = out / x;
    fq[f] = esign[e] * out;
    fh[f] = 0.5 * v * v + (fK[f] * sqrt(x) + foffset[f]) / density;
}

static double step(double t, double remaining, int *more)
{
    double fastest = 0;
    for (int s = 0; s < segments; s++)
        for (int i = start[s]; i < start[s] + count[s]; i++) {
            double w = sqrt(A[i]), k = 0.5 * K[i] / w, c2 = A[i] * k / density, c = sqrt(c2), x = (fabs(U[i]) + c) * perdx[i];
            r[i] = w; rise[i] = k; slow[i] = c / c2; P[i] = K[i] * w + offset[i]; Q[i] = A[i] * U[i];
            if (x > fastest) fastest = x;
            if (!(fabs(U[i]) < c)) { fprintf(stderr, "supercritical\n"); exit(4); }
        }
    double left = fmax(1, ceil(remaining * fastest / courant - 1e-9)), dt = remaining / left, hd = 0.5 * dt;
    *more = left > 1;
    for (int s = 0; s < segments; s++) {
        int a = start[s], z = a + count[s];
        if (count[s] == 1) { P[a - 1] = P[z] = P[a]; Q[a - 1] = Q[z] = Q[a]; }
        else { P[a - 1] = 2 * P[a] - P[a + 1]; Q[a - 1] = 2 * Q[a] - Q[a + 1]; P[z] = 2 * P[z - 1] - P[z - 2]; Q[z] = 2 * Q[z - 1] - Q[z - 2]; }
        for (int i = a; i < z; i++) {
            double dp, dq, sf = SMALL / density * A[i] * slow[i];
            limited(P[i] - P[i - 1], P[i + 1] - P[i], SMALL * SMALL, &dp);
            limited(Q[i] - Q[i - 1], Q[i + 1] - Q[i], sf * sf, &dq);
            double px = dp * perdx[i], qx = dq * perdx[i], u = U[i], u2 = u * u, shape = 2 * r[i] * (rootslope[i] - (r[i] - rootref[i]) * kslope[i]);
            double pt = -rise[i] * qx, qt = u2 * shape - 2 * u * qx - (A[i] / density - 2 * u2 * r[i] * soft[i]) * px - drag * u;
            double pm = P[i] + hd * pt, qmid = Q[i] + hd * qt;
            double p = pm - 0.5 * dp, q = qmid - 0.5 * dq, root = fmax((p - foffset[i]) * fsoft[i], LEAST * r[i]), area = fmax(root * root, LEAST * A[i]), v = q / area;
            am[i] = area; qm[i] = q; hm[i] = 0.5 * v * v + p / density; ym[i] = area * slow[i];
            p = pm + 0.5 * dp; q = qmid + 0.5 * dq; root = fmax((p - foffset[i + 1]) * fsoft[i + 1], LEAST * r[i]); area = fmax(root * root, LEAST * A[i]); v = q / area;
            ap[i] = area; qp[i] = q; hp[i] = 0.5 * v * v + p / density; yp[i] = area * slow[i];
        }
        for (int i = a + 1; i < z; i++) {
            double up = (qp[i - 1] - qm[i] + ym[i] * (hm[i] - hp[i - 1])) / (yp[i - 1] + ym[i]);
            fh[i] = hp[i - 1] + up;
            fq[i] = qp[i - 1] - yp[i - 1] * up;
        }
    }
    for (int n = 0; n < junctions; n++) {
        double above = 0, below = 0;
        for (int e = jfirst[n]; e < jfirst[n + 1]; e++) {
            int c = jcell[e], d = jsign[e] > 0;
            double y = d ? yp[c] : ym[c];
            above += jsign[e] * (d ? qp[c] : qm[c]) + (d ? hp[c] : hm[c]) * y;
            below += y;
        }
        double head = above / below;
        for (int e = jfirst[n]; e < jfirst[n + 1]; e++) {
            int c = jcell[e], d = jsign[e] > 0;
            fq[jface[e]] = (d ? qp[c] : qm[c]) + jsign[e] * ((d ? hp[c] : hm[c]) - head) * (d ? yp[c] : ym[c]);
            fh[jface[e]] = head;
        }
    }
    for (int e = 0; e < ends; e++) load(e, dt, t);
    for (int s = 0; s < segments; s++)
        for (int i = start[s]; i < start[s] + count[s]; i++) {
            double over = dt * perdx[i], next = A[i] - over * (fq[i + 1] - fq[i]), loss = dt * drag, both = A[i] + next;
            U[i] = (U[i] * (both - loss) - both * over * (fh[i + 1] - fh[i])) / (both + loss);
            A[i] = next;
        }
    return dt;
}

int main(int argc, char **argv)
{
    FILE *f = fopen(argv[1], "r");
    if (!f || argc < 4) return 2;
    int beats = atoi(argv[2]), repeats = atoi(argv[3]);
    length = (int)number(f); segments = (int)number(f); junctions = (int)number(f); junction_ends = (int)number(f); ends = (int)number(f); points = (int)number(f);
    density = number(f); drag = number(f); courant = number(f); period = number(f); settle = number(f);
    double **geometry[] = { &perdx, &K, &soft, &offset, &rootref, &rootslope, &kslope, &fK, &fsoft, &foffset, &A };
    for (int i = 0; i < 11; i++) *geometry[i] = array(f, length);
    start = ints(f, segments); count = ints(f, segments); jfirst = ints(f, junctions + 1); jface = ints(f, junction_ends); jcell = ints(f, junction_ends); jsign = ints(f, junction_ends);
    eface = ints(f, ends); ecell = ints(f, ends); esign = ints(f, ends); e1 = array(f, ends); e2 = array(f, ends); ec = array(f, ends); ep = array(f, ends); wt = array(f, points); wv = array(f, points);
    double **work[] = { &U, &r, &P, &Q, &rise, &slow, &am, &qm, &hm, &ym, &ap, &qp, &hp, &yp, &fq, &fh };
    for (int i = 0; i < 16; i++) *work[i] = zeros(length);
    double t = 0, best = 1e300;
    long steps = 0;
    for (int round = 0; round <= repeats; round++) {
        struct timespec from, to;
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
        steps = 0;
        for (int b = 0; b < (round ? 1 : beats); b++) {
            double target = t + period;
            int more = 1;
            while (more) { t += step(t, target - t, &more); steps++; }
            t = target;
        }
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
        double ms = 1e3 * (to.tv_sec - from.tv_sec) + 1e-6 * (to.tv_nsec - from.tv_nsec);
        if (round && ms < best) best = ms;
        if (!round) { printf("state"); for (int s = 0; s < segments; s++) for (int i = start[s]; i < start[s] + count[s]; i++) printf(" %.17g", A[i]); printf("\n"); }
    }
    printf("ms %.6f steps %ld\n", best, steps);
    return 0;
}
