package sillwright.bench;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import javax.imageio.ImageIO;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/// Writes a survey of more than 500 members and 300 pictures of 12 megapixels: the invented house of the examples built eight times over, the pictures drawn from a seed.
///
/// `sillwright.bench.BigHouse examples/fallow-brook-house.survey.json FOLDER [houses] [pictures]`
public final class BigHouse {
    private static final int WIDE = 4000, HIGH = 3000;
    private static final JsonMapper JSON = new JsonMapper();

    private BigHouse() {}

    public static void main(String[] words) throws IOException {
        Path folder = Path.of(words[1]);
        int houses = words.length > 2 ? Integer.parseInt(words[2]) : 8, pictures = words.length > 3 ? Integer.parseInt(words[3]) : 300;
        JsonNode house = JSON.readTree(Files.readString(Path.of(words[0])));
        ArrayNode entries = JSON.createArrayNode();
        int members = 0;
        for (int copy = 0; copy < houses; copy++)
            for (JsonNode entry : house.get("entries")) {
                String kind = entry.get("kind").asString();
                if (copy > 0 && kind.equals("building")) continue;
                if (kind.equals("member")) members++;
                entries.add(copied((ObjectNode) entry.deepCopy(), copy));
            }
        Files.createDirectories(folder.resolve("photos"));
        Random random = new Random(1887);
        JsonNode last = entries.get(entries.size() - 1);
        for (int i = 0; i < pictures; i++) {
            String file = "photos/" + i + ".jpg";
            draw(random, folder.resolve(file));
            ObjectNode entry = entries.addObject().put("id", String.format("0199e3f0-0000-7000-8000-%012x", i)).put("at", last.get("at").asString()).put("device", "phone-1").put("author", "A. Surveyor").put("kind", "photo");
            entry.putObject("says").put("file", file).put("side", "south-" + i % houses).put("caption", "drawn by program, number " + i)
                    .putObject("pin").put("member", "s-post-" + (1 + i % 4) + "-" + i % houses).put("face", "front").put("along", 50 + i + " mm").put("across", "50 mm");
        }
        ObjectNode survey = ((ObjectNode) house.deepCopy());
        survey.set("entries", entries);
        Files.writeString(folder.resolve("big.survey.json"), survey.toString());
        System.out.println(members + " members, " + entries.size() + " entries, " + pictures + " pictures of " + WIDE + " by " + HIGH);
    }

    /// An entry of a later house: ids of entries, sides and members of its own.
    private static ObjectNode copied(ObjectNode entry, int copy) {
        entry.put("id", id(entry.get("id").asString(), copy));
        named((ObjectNode) entry.get("says"), entry.get("kind").asString(), copy);
        return entry;
    }

    private static void named(ObjectNode says, String kind, int copy) {
        for (String reference : new String[] {"member", "side"}) if (says.has(reference)) says.put(reference, says.get(reference).asString() + "-" + copy);
        if (kind.equals("member") || kind.equals("side")) says.put("id", says.get("id").asString() + "-" + copy);
        if (says.has("title") && kind.equals("side")) says.put("title", says.get("title").asString() + ", house " + copy);
        if (says.has("entry")) says.put("entry", id(says.get("entry").asString(), copy));
        if (says.get("says") instanceof ObjectNode inner) named(inner, says.get("kind").asString(), copy);
    }

    private static String id(String id, int copy) { return id.substring(0, id.length() - 12) + String.format("%02x", copy) + id.substring(id.length() - 10); }

    /// Boards in a hundred browns, with grain: as much to pack as a photograph has.
    private static void draw(Random random, Path to) throws IOException {
        BufferedImage picture = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        Graphics2D ink = picture.createGraphics();
        for (int x = 0; x < WIDE; x += 40) {
            ink.setColor(new Color(90 + random.nextInt(120), 60 + random.nextInt(90), 30 + random.nextInt(60)));
            ink.fillRect(x, 0, 40, HIGH);
        }
        for (int i = 0; i < 6000; i++) {
            ink.setColor(new Color(random.nextInt(90), random.nextInt(70), random.nextInt(50)));
            int x = random.nextInt(WIDE), y = random.nextInt(HIGH);
            ink.drawLine(x, y, x + random.nextInt(9), y + random.nextInt(400));
        }
        ink.dispose();
        ImageIO.write(picture, "jpg", to.toFile());
    }
}
