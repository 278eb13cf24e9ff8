package sillwright.store;

import module java.base;

import sillwright.walk.Entry;

/// A program that writes in a book as fast as it can until it is killed. Every line it prints is something the book has
/// acknowledged before: an entry's id, a picture's digest, a backup's name.
final class Hammer {
    private final String where;
    private final Path backups;
    private final PrintStream out;
    private long left;
    private Book book;

    private Hammer(String where, Path backups, PrintStream out, long left) {
        this.where = where;
        this.backups = backups;
        this.out = out;
        this.left = left;
        this.book = Book.begin(where);
    }

    /// @param args the book, a folder for backups, a seed; and how many things to do before it ends, where it is let live
    public static void main(String[] args) throws Exception {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, java.nio.charset.StandardCharsets.US_ASCII);
        say(out, "begun", "");
        Hammer hammer = new Hammer(args[0], Path.of(args[1]), out, args.length > 3 ? Long.parseLong(args[3]) : Long.MAX_VALUE);
        hammer.say("open", "");
        // The building, its side and its member, every time: they are the same entries, and are kept once.
        hammer.book.append("shed", BookTest.shed().subList(0, 3));
        long seed = Long.parseLong(args[2]);
        ReadWriteLock inUse = new ReentrantReadWriteLock();
        Thread second = new Thread(() -> hammer.write(new Random(seed + 1), "desk-b", inUse));
        second.setDaemon(true);
        second.start();
        hammer.write(new Random(seed), "desk-a", inUse);
        System.exit(0);
    }

    private void say(String what, String which) { say(out, what, which); }

    private static void say(PrintStream out, String what, String which) {
        byte[] line = (what + " " + which + "\n").getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        synchronized (out) {
            out.write(line, 0, line.length);
            out.flush();
        }
    }

    private void write(Random random, String device, ReadWriteLock inUse) {
        List<Entry> mine = new ArrayList<>();
        Pen pen = null;
        Book pens = null;
        try {
            while (left-- > 0) {
                int what = random.nextInt(100);
                if (what < 3) {
                    inUse.writeLock().lock();
                    try {
                        book.close();
                        book = Book.open(where);
                    } finally {
                        inUse.writeLock().unlock();
                    }
                    continue;
                }
                inUse.readLock().lock();
                try {
                    if (pens != book) pen = (pens = book).pen(device, "A");
                    if (what < 6) backup(random);
                    else if (what < 20) photo(random);
                    else if (what < 40) batch(random, pen, mine);
                    else if (what < 50 && !mine.isEmpty()) book.append("shed", mine.subList(random.nextInt(mine.size()), mine.size()));
                    else if (what < 60 && !mine.isEmpty()) mine.add(said(pen.strike("shed", mine.get(random.nextInt(mine.size())), "because")));
                    else mine.add(said(pen.write("shed", BookTest.shed().get(random.nextInt(3, 8)).body())));
                } finally {
                    inUse.readLock().unlock();
                }
            }
        } catch (Throwable thrown) {
            // Whatever goes wrong other than being killed fails the test.
            say("broken", thrown.toString().replace('\n', ' '));
            thrown.printStackTrace();
        }
    }

    private Entry said(Entry entry) {
        say("entry", entry.id());
        return entry;
    }

    private void batch(Random random, Pen pen, List<Entry> mine) {
        List<Entry> batch = new ArrayList<>();
        for (int i = random.nextInt(1, 60); i > 0; i--) batch.add(pen.entry(BookTest.shed().get(random.nextInt(3, 8)).body()));
        book.append("shed", batch);
        batch.forEach(this::said);
        mine.addAll(batch);
    }

    private void photo(Random random) {
        byte[] noise = new byte[random.nextInt(1_000, 200_000)];
        random.nextBytes(noise);
        byte[] head = PictureTest.jpeg(4, 3), picture = Arrays.copyOf(head, head.length + noise.length);
        System.arraycopy(noise, 0, picture, head.length, noise.length);
        book.photos().keep(picture);
        say("photo", Line.digest(picture));
    }

    private void backup(Random random) {
        Path file = backups.resolve(Long.toHexString(random.nextLong()) + ".book");
        Backup.write(book, file);
        say("backup", file.getFileName().toString());
    }
}
