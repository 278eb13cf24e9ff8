package sillwright.sheet;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

import sillwright.Assessment;
import sillwright.measure.Refused;
import sillwright.walk.Photo;
import sillwright.walk.Spot;
import sillwright.walk.Survey;

import static sillwright.sheet.Text.*;

/// The pictures of the walk, each with its member and the point it shows; those that are not at hand are named.
final class PhotoSheet {
    private PhotoSheet() {}

    static List<Markup> pages(Assessment assessment, Print print) {
        Survey survey = assessment.survey();
        List<Photo> photos = survey.photos().stream().map(noted -> noted.what()).toList();
        if (photos.isEmpty()) return List.of();
        List<Markup> all = new ArrayList<>(List.of(h2("photos", "Photos"), small("Turned upright, made smaller and freed of what the camera noted of place and time.")));
        List<Markup> shown = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (Photo photo : photos) {
            Optional<byte[]> found = print.pictures().apply(photo.file());
            String words = words(survey, photo, assessment);
            if (found.isEmpty()) missing.add(photo.file() + ", " + words);
            else try {
                byte[] small = Photograph.small(found.get(), photo.file());
                shown.add(div("atom photo", Markup.of("img").with("src", "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(small)).with("alt", words), small(words)));
            } catch (Refused unread) {
                missing.add(photo.file() + ", " + words + " (" + unread.getMessage() + ")");
            }
        }
        all.add(columns(shown));
        if (!missing.isEmpty()) all.add(p(b("Not at hand: "), new Node.Text(String.join("; ", missing) + ".")));
        return List.of(div("upright", all));
    }

    private static String words(Survey survey, Photo photo, Assessment assessment) {
        String at = photo.pin().map(pin -> member(survey, pin, assessment)).orElse(Said.sideTitle(survey, photo.side()));
        return photo.caption().isBlank() ? at : at + ": " + photo.caption();
    }

    private static String member(Survey survey, Spot pin, Assessment assessment) {
        var member = survey.members().get(pin.member());
        if (member == null) return pin.member();
        return WoodSheet.places(assessment).getOrDefault(pin.member(), "") + ", " + Said.title(member) + ", " + Said.length(pin.alongMm(), assessment.settings().units()) + " from the "
                + Said.startName(member) + ", " + sillwright.walk.Choice.said(pin.face()) + " face";
    }
}
