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

typedef struct { double *half, *open, *air, *film, *leak, *supply, *stays, *left, *pull, *pulled, *wet; } faces;
typedef struct {
    int slices, pieces;
    double step;
    double *u, *step_over, *over_distance, *bound, *rise, *saturation, *free_, *over_room, *full;
    faces near_, far_;
    double *shed, *carried, *link;
} stack;

static inline double above(double x) { return 0.5 * (x + fabs(x)); }

static inline double grown(double x) {
    double q = 0.25 * x;
    double root = 1 + q * (1 + q * (0.5 + q * (1.0 / 6 + q * (1.0 / 24 + q * (1.0 / 120)))));
    double square = root * root;
    return square * square;
}

static inline double link_of(double u, double v, double saturation, double rise, double over_room, double bound, double free_) {
    double above_u = above(u - saturation), above_v = above(v - saturation);
    double bound_u = u - above_u, bound_v = v - above_v, between = bound_u - bound_v;
    double lacks = 2 * saturation - bound_u - bound_v, has = u - bound_u + v - bound_v;
    double walls = (fabs(between) + TINY * lacks) / (fabs(u - v) + TINY * (lacks + has) + LEAST);
    double spread = 0.5 * rise * between, square = spread * spread;
    double walls_d = bound * grown(rise * 0.5 * (bound_u + bound_v)) * (1 + square * (1.0 / 6 + square * (1.0 / 120)));
    double s = above_u * over_room, t = above_v * over_room;
    return walls_d * walls + free_ * 0.25 * (s + t) * (s * s + t * t) * (1 - walls);
}

static void face(const stack *k, const faces *f, const double *restrict u_, double at_rest, double quick, double vapour, double runs, double rain) {
    const double *restrict half = f->half, *restrict open = f->open, *restrict air = f->air, *restrict film = f->film, *restrict leak = f->leak,
                 *restrict supply = f->supply, *restrict stays = f->stays;
    double *restrict left = f->left, *restrict pull = f->pull, *restrict pulled = f->pulled, *restrict wet = f->wet;
    const double *restrict bound = k->bound, *restrict rise = k->rise, *restrict saturation = k->saturation, *restrict free_ = k->free_,
                 *restrict over_room = k->over_room, *restrict full = k->full;
    double raining = rain > 0 ? 1 : 0, standing = 1 - raining, over_vapour = 1 / vapour;
#pragma GCC ivdep
    for (int m = 0; m < k->pieces; m++) {
        double stay = above(left[m] - 1), fresh = stays[m] * raining;
        double lasts = 0.5 * (stay + fresh + fabs(stay - fresh));
        left[m] = lasts;
        double wetted = runs * 0.5 * (lasts + 1 - fabs(lasts - 1));
        double u = u_[m], over = above(u - saturation[m]), b = u - over, s = over * over_room[m];
        double drying = (fabs(b - at_rest) + TINY) / (fabs(u - at_rest) + TINY);
        double through = bound[m] * quick;
        double vapour_pull = open[m] * drying / ((air[m] * over_vapour + half[m] / through) / grown(rise[m] * b) + film[m] * over_vapour);
        double gap = full[m] - u + TINY, walls = saturation[m] - b;
        double filling = walls / gap, spread = 0.5 * rise[m] * walls, square = spread * spread;
        double walls_d = through * grown(rise[m] * 0.5 * (b + saturation[m])) * (1 + square * (1.0 / 6 + square * (1.0 / 120)));
        double liquid = leak[m] * (walls_d * filling + free_[m] * 0.25 * (1 + s) * (1 + s * s) * (1 - filling)) / half[m];
        double most = (supply[m] * rain + standing) / gap;
        double liquid_pull = 0.5 * (liquid + most - fabs(liquid - most));
        wet[m] = wetted;
        pull[m] = (1 - wetted) * vapour_pull + wetted * liquid_pull;
        pulled[m] = (1 - wetted) * vapour_pull * at_rest + wetted * liquid_pull * full[m];
    }
}

static void hour(const stack *k, double at_rest, double quick, double vapour, double runs, double rain) {
    const int n = k->pieces, last = k->slices - 1;
    const double *restrict bound = k->bound, *restrict rise = k->rise, *restrict saturation = k->saturation, *restrict free_ = k->free_,
                 *restrict over_room = k->over_room;
    double *restrict link = k->link;
    face(k, &k->near_, k->u, at_rest, quick, vapour, runs, rain);
    face(k, &k->far_, k->u + (size_t) last * n, at_rest, quick, vapour, runs, rain);
    {
        const double *restrict u0 = k->u, *restrict u1 = k->u + n, *restrict distance = k->over_distance, *restrict step = k->step_over;
        const double *restrict pull = k->near_.pull, *restrict pulled = k->near_.pulled;
        double *restrict shed = k->shed, *restrict carried = k->carried;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            double g = link_of(u0[m], u1[m], saturation[m], rise[m], over_room[m], bound[m] * quick, free_[m] * runs) * distance[m];
            double c = step[m] * g, pivot = 1 / (1 + c + step[m] * pull[m]);
            link[m] = g;
            shed[m] = c * pivot;
            carried[m] = (u0[m] + step[m] * pulled[m]) * pivot;
        }
    }
    for (int i = 1; i < last; i++) {
        const double *restrict here = k->u + (size_t) i * n, *restrict next = here + n, *restrict distance = k->over_distance + (size_t) i * n,
                     *restrict step = k->step_over + (size_t) i * n, *restrict shed_before = k->shed + (size_t) (i - 1) * n,
                     *restrict carried_before = k->carried + (size_t) (i - 1) * n;
        double *restrict shed = k->shed + (size_t) i * n, *restrict carried = k->carried + (size_t) i * n;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            double g = link_of(here[m], next[m], saturation[m], rise[m], over_room[m], bound[m] * quick, free_[m] * runs) * distance[m];
            double a = step[m] * link[m], c = step[m] * g, pivot = 1 / (1 + c + a * (1 - shed_before[m]));
            link[m] = g;
            shed[m] = c * pivot;
            carried[m] = (here[m] + a * carried_before[m]) * pivot;
        }
    }
    {
        double *restrict u = k->u + (size_t) last * n;
        const double *restrict step = k->step_over + (size_t) last * n, *restrict pull = k->far_.pull, *restrict pulled = k->far_.pulled,
                     *restrict shed_before = k->shed + (size_t) (last - 1) * n, *restrict carried_before = k->carried + (size_t) (last - 1) * n;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) {
            double a = step[m] * link[m], pivot = 1 / (1 + step[m] * pull[m] + a * (1 - shed_before[m]));
            u[m] = (u[m] + step[m] * pulled[m] + a * carried_before[m]) * pivot;
        }
    }
    for (int i = last - 1; i >= 0; i--) {
        double *restrict here = k->u + (size_t) i * n;
        const double *restrict next = here + n, *restrict shed = k->shed + (size_t) i * n, *restrict carried = k->carried + (size_t) i * n;
#pragma GCC ivdep
        for (int m = 0; m < n; m++) here[m] = carried[m] + shed[m] * next[m];
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
    f.half = row(in, n); f.open = row(in, n); f.air = row(in, n); f.film = row(in, n); f.leak = row(in, n);
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
    k.shed = row(NULL, all); k.carried = row(NULL, all); k.link = row(NULL, n);
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
