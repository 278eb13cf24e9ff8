/* The transport kernel by hand in C: the same layout (one row per slice, the piece innermost), the same steps in the same
   order as sillwright.wood.drying.Transport. Build: gcc -O3 -march=native -std=gnu11 -o transport transport.c -lm
   Run: transport CASE ANSWER ROUNDS; prints the least processor time of a round in seconds. */
#define _POSIX_C_SOURCE 200809L
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define TINY 1e-9
#define LEAST 1e-300

typedef struct { double *half, *open, *air, *film, *leak, *fills, *supply, *stays, *left, *pull, *pulled, *wet; } faces;
typedef struct {
    int slices, pieces;
    double step;
    double *u, *step_over, *over_distance, *bound, *rise, *saturation, *free_, *over_room, *full;
    faces near_, far_;
    double *gained, *wet_hours, *shed, *carried, *link, *kept, *held, *walls, *loose, *over_rise, *of_free;
} stack;

static inline double above(double x) { return 0.5 * (x + fabs(x)); }

static inline double grown(double x) {
    double q = 0.25 * x;
    double root = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
    double square = root * root;
    return square * square;
}

/* What drives one slice: D of bound water, over the rise also the sum of D up to this moisture; that sum for free water; how far the slice lies from
   saturation, times D there, and alone. */
typedef struct { double walls, loose, lets, away; } drive;

static inline drive drive_of(double u, double saturation, double rise, double over_room, double bound, double of_free) {
    double over = u - saturation, a = above(over), s = a * over_room, second = s * s, walls = bound * grown(rise * (u - a));
    return (drive) { walls, of_free * second * second, (a - over) * walls + 4 * of_free * second * second, fabs(over) };
}

static void face(const stack *k, const faces *f, const double *restrict u_, double at_rest, double quick, double vapour, double runs, double rain) {
    const double *restrict half = f->half, *restrict open = f->open, *restrict air = f->air, *restrict film = f->film, *restrict leak = f->leak, *restrict fills = f->fills,
                 *restrict supply = f->supply, *restrict stays = f->stays;
    double *restrict left = f->left, *restrict pull = f->pull, *restrict pulled = f->pulled, *restrict wet = f->wet;
    const double *restrict bound = k->bound, *restrict rise = k->rise, *restrict saturation = k->saturation, *restrict free_ = k->free_,
                 *restrict over_room = k->over_room, *restrict full = k->full;
    double raining = rain > 0 ? 1 : 0, standing = 1 - raining, over_vapour = 1 / vapour, over_quick = 1 / quick;
#pragma GCC ivdep
    for (int m = 0; m < k->pieces; m++) {
        double stay = above(left[m] - 1), fresh = stays[m] * raining;
        double lasts = 0.5 * (stay + fresh + fabs(stay - fresh));
        left[m] = lasts;
        double wetted = runs * 0.5 * (lasts + 1 - fabs(lasts - 1));
        double u = u_[m], over = above(u - saturation[m]), b = u - over, s = over * over_room[m];
        double through = bound[m] * quick;
        double carries = bound[m] * grown(rise[m] * b);
        double vapour_pull = open[m] * (fabs(b - at_rest) + TINY) * carries
                / ((fabs(u - at_rest) + TINY) * (air[m] * over_vapour * bound[m] + half[m] * over_quick + film[m] * over_vapour * carries));
        double gap = full[m] - u + TINY, walls = saturation[m] - b;
        double spread = 0.5 * rise[m] * walls, square = spread * spread;
        double walls_d = through * grown(rise[m] * 0.5 * (b + saturation[m])) * (1 + square * (1.0 / 6 + square * (1.0 / 120)));
        double liquid = leak[m] * walls_d * walls + fills[m] * free_[m] * 0.25 * (1 + s) * (1 + s * s) * (gap - walls);
        double most = (supply[m] * rain + standing) * half[m];
        double liquid_pull = 0.5 * (liquid + most - fabs(liquid - most)) / (gap * half[m]);
        wet[m] = wetted;
        pull[m] = (1 - wetted) * vapour_pull + wetted * liquid_pull;
        pulled[m] = (1 - wetted) * vapour_pull * at_rest + wetted * liquid_pull * full[m];
    }
}

static void hour(const stack *k, double at_rest, double quick, double vapour, double runs, double rain) {
    const int n = k->pieces, last = k->slices - 1;
    const double *restrict bound = k->bound, *restrict rise = k->rise, *restrict saturation = k->saturation,
                 *restrict over_room = k->over_room, *restrict over_rise = k->over_rise, *restrict of_free = k->of_free;
    double *restrict link = k->link, *restrict kept = k->kept, *restrict held = k->held, *restrict walls = k->walls, *restrict loose = k->loose;
    face(k, &k->near_, k->u, at_rest, quick, vapour, runs, rain);
    face(k, &k->far_, k->u + (size_t) last * n, at_rest, quick, vapour, runs, rain);
    {
        const double *restrict u0 = k->u, *restrict u1 = k->u + n, *restrict distance = k->over_distance, *restrict step = k->step_over;
        const double *restrict pull = k->near_.pull, *restrict pulled = k->near_.pulled;
        double *restrict shed = k->shed, *restrict carried = k->carried;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            drive d = drive_of(u0[m], saturation[m], rise[m], over_room[m], bound[m] * quick, of_free[m] * runs);
            drive e = drive_of(u1[m], saturation[m], rise[m], over_room[m], bound[m] * quick, of_free[m] * runs);
            double l = (fabs((d.walls - e.walls) * over_rise[m] + d.loose - e.loose) + TINY * e.lets) * distance[m];
            double apart = fabs(u0[m] - u1[m]) + TINY * e.away + LEAST, c = step[m] * l, a = 1 + step[m] * pull[m], pivot = 1 / (a * apart + c), h = (u0[m] + step[m] * pulled[m]) * pivot;
            walls[m] = e.walls;
            loose[m] = e.loose;
            link[m] = l;
            kept[m] = a * pivot;
            held[m] = h;
            shed[m] = c * pivot;
            carried[m] = h * apart;
        }
    }
    for (int i = 1; i < last; i++) {
        const double *restrict here = k->u + (size_t) i * n, *restrict next = here + n, *restrict distance = k->over_distance + (size_t) i * n,
                     *restrict step = k->step_over + (size_t) i * n;
        double *restrict shed = k->shed + (size_t) i * n, *restrict carried = k->carried + (size_t) i * n;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            drive e = drive_of(next[m], saturation[m], rise[m], over_room[m], bound[m] * quick, of_free[m] * runs);
            double l = (fabs((walls[m] - e.walls) * over_rise[m] + loose[m] - e.loose) + TINY * e.lets) * distance[m];
            double apart = fabs(here[m] - next[m]) + TINY * e.away + LEAST, back = step[m] * link[m], c = step[m] * l, a = 1 + back * kept[m], pivot = 1 / (a * apart + c);
            double h = (here[m] + back * held[m]) * pivot;
            walls[m] = e.walls;
            loose[m] = e.loose;
            link[m] = l;
            kept[m] = a * pivot;
            held[m] = h;
            shed[m] = c * pivot;
            carried[m] = h * apart;
        }
    }
    {
        double *restrict u = k->u + (size_t) last * n;
        const double *restrict step = k->step_over + (size_t) last * n, *restrict pull = k->far_.pull, *restrict pulled = k->far_.pulled;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            double back = step[m] * link[m];
            u[m] = (u[m] + step[m] * pulled[m] + back * held[m]) / (1 + step[m] * pull[m] + back * kept[m]);
        }
    }
    for (int i = last - 1; i >= 0; i--) {
        double *restrict here = k->u + (size_t) i * n;
        const double *restrict next = here + n, *restrict shed = k->shed + (size_t) i * n, *restrict carried = k->carried + (size_t) i * n;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) here[m] = carried[m] + shed[m] * next[m];
    }
    /* What came in and went out, from the fluxes themselves, and the hours that a face was wet. */
    {
        const double *restrict first = k->u, *restrict end = k->u + (size_t) last * n, *restrict near_pull = k->near_.pull, *restrict near_pulled = k->near_.pulled,
                     *restrict far_pull = k->far_.pull, *restrict far_pulled = k->far_.pulled, *restrict near_wet = k->near_.wet, *restrict far_wet = k->far_.wet;
        double *restrict gained = k->gained, *restrict wet_hours = k->wet_hours;
        const double step_s = k->step, hours = step_s / 3600;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            gained[m] += step_s * (near_pulled[m] - near_pull[m] * first[m] + far_pulled[m] - far_pull[m] * end[m]);
            wet_hours[m] += hours * 0.5 * (near_wet[m] + far_wet[m] + fabs(near_wet[m] - far_wet[m]));
        }
    }
}

static double *row(FILE *in, size_t n) {
    double *a = aligned_alloc(64, (n * sizeof(double) + 63) / 64 * 64);
    if (in) { if (fread(a, sizeof(double), n, in) != n) { fprintf(stderr, "the case is short\n"); exit(2); } }
    else memset(a, 0, n * sizeof(double));
    return a;
}

static faces read_faces(FILE *in, int n) {
    faces f;
    f.half = row(in, n); f.open = row(in, n); f.air = row(in, n); f.film = row(in, n); f.leak = row(in, n); f.fills = row(in, n);
    f.supply = row(in, n); f.stays = row(in, n); f.left = row(in, n);
    f.pull = row(NULL, n); f.pulled = row(NULL, n); f.wet = row(NULL, n);
    return f;
}

int main(int argc, char **argv) {
    if (argc != 4) { fprintf(stderr, "usage: transport CASE ANSWER ROUNDS\n"); return 2; }
    FILE *in = fopen(argv[1], "rb");
    if (!in) { perror(argv[1]); return 2; }
    double head[4];
    if (fread(head, sizeof(double), 4, in) != 4) return 2;
    stack k;
    k.slices = (int) head[0]; k.pieces = (int) head[1]; k.step = head[2];
    int hours = (int) head[3], n = k.pieces;
    size_t all = (size_t) k.slices * n;
    k.u = row(in, all); k.step_over = row(in, all); k.over_distance = row(in, all - n);
    k.bound = row(in, n); k.rise = row(in, n); k.saturation = row(in, n); k.free_ = row(in, n); k.over_room = row(in, n); k.full = row(in, n);
    k.near_ = read_faces(in, n); k.far_ = read_faces(in, n);
    k.shed = row(NULL, all); k.carried = row(NULL, all); k.link = row(NULL, n); k.kept = row(NULL, n); k.held = row(NULL, n); k.walls = row(NULL, n); k.loose = row(NULL, n);
    k.gained = row(NULL, n); k.wet_hours = row(NULL, n);
    k.over_rise = row(NULL, n); k.of_free = row(NULL, n);
    for (int m = 0; m < n; m++) { k.over_rise[m] = 1 / k.rise[m]; k.of_free[m] = 0.25 * k.free_[m] / k.over_room[m]; }
    double *at_rest = row(in, hours), *quick = row(in, hours), *vapour = row(in, hours), *runs = row(in, hours), *rain = row(in, hours);
    fclose(in);
    double *start = row(NULL, all), *near_left = row(NULL, n), *far_left = row(NULL, n), best = 1e300;
    memcpy(start, k.u, all * sizeof(double)); memcpy(near_left, k.near_.left, n * sizeof(double)); memcpy(far_left, k.far_.left, n * sizeof(double));
    for (int round = 0; round < atoi(argv[3]); round++) {
        memcpy(k.u, start, all * sizeof(double)); memcpy(k.near_.left, near_left, n * sizeof(double)); memcpy(k.far_.left, far_left, n * sizeof(double));
        struct timespec a, b;
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &a);
        for (int h = 0; h < hours; h++) hour(&k, at_rest[h], quick[h], vapour[h], runs[h], rain[h]);
        clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &b);
        double took = (b.tv_sec - a.tv_sec) + (b.tv_nsec - a.tv_nsec) * 1e-9;
        if (took < best) best = took;
    }
    FILE *out = fopen(argv[2], "wb");
    if (!out || fwrite(k.u, sizeof(double), all, out) != all || fclose(out)) { perror(argv[2]); return 2; }
    printf("%.9f\n", best);
    return 0;
}
