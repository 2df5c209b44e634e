package org.neuroexam;

import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One thing that the engine says, without what differs from exam to exam, so that the same thing is told once. */
record Finding(ResultSeverityEnum severity, String type, String path, String message) {
  private static final Pattern RESOURCE = Pattern.compile("/\\*([A-Za-z]+)/[^*]*\\*/");
  private static final Pattern UUID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
  private static final Pattern TIME = Pattern.compile("\\d{4}-\\d{2}-\\d{2}(T[0-9:.]+(Z|[+-]\\d{2}:\\d{2})?)?");
  private static final Pattern INDEX = Pattern.compile("\\[\\d+\\]");

  /** @param root type of the resource on the line, for places that name none */
  static Finding of(SingleValidationMessage said, String root) {
    String location = said.getLocationString() == null ? root : said.getLocationString();
    String type = root;
    int from = 0;
    Matcher resource = RESOURCE.matcher(location);
    while (resource.find()) {
      type = resource.group(1);
      from = resource.end();
    }
    String path = from == 0 ? location : type + location.substring(from);
    return new Finding(said.getSeverity(), type, INDEX.matcher(path).replaceAll("[]"), general(said.getMessage()));
  }

  private static String general(String message) {
    String text = RESOURCE.matcher(message).replaceAll("");
    text = UUID.matcher(text).replaceAll("<id>");
    text = TIME.matcher(text).replaceAll("<time>");
    return INDEX.matcher(text).replaceAll("[]");
  }
}
