package org.neuroexam;

import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import java.io.PrintStream;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;

/** What the engine said, each thing once with how often and where first. Hints are left out. */
final class Findings {
  private static final class Met {
    final AtomicLong count = new AtomicLong();
    final String place;

    Met(String place) {
      this.place = place;
    }
  }

  private final Map<Finding, Met> met = new ConcurrentHashMap<>();

  void add(String place, String rootType, List<SingleValidationMessage> messages) {
    for (SingleValidationMessage said : messages) {
      if (said.getSeverity() == ResultSeverityEnum.INFORMATION) continue;
      Finding finding = Finding.of(said, rootType);
      met.computeIfAbsent(finding, key -> new Met(place + " " + said.getLocationString())).count.incrementAndGet();
    }
  }

  /**
   * @param resources  how many were looked at
   * @param likeOthers how many were not, since they are like one that was
   * @return whether there is nothing but allowed warnings
   */
  boolean report(long resources, long likeOthers, AllowedWarnings allowed, PrintStream out) {
    long errors = 0;
    long warnings = 0;
    long allowedWarnings = 0;
    for (Finding finding : inOrder()) {
      Met where = met.get(finding);
      long count = where.count.get();
      boolean isWarning = finding.severity() == ResultSeverityEnum.WARNING;
      if (isWarning && allowed.allows(finding)) {
        allowedWarnings += count;
        continue;
      }
      if (isWarning) warnings += count;
      else errors += count;
      out.printf("%s %s, %d times: %s%n", finding.severity(), finding.type(), count, finding.message());
      out.printf("  at %s, first in %s%n", finding.path(), where.place);
    }
    for (String unused : allowed.unused()) out.printf("allowed, but not met: %s%n", unused);
    out.printf(
        "%d resources and %d that differ from them in ids, times and persons alone: %d errors, %d warnings; %d allowed%n",
        resources, likeOthers, errors, warnings, allowedWarnings);
    return errors == 0 && warnings == 0;
  }

  private List<Finding> inOrder() {
    Comparator<Finding> worstFirst = Comparator.comparing(Finding::severity).reversed();
    return met.keySet().stream()
        .sorted(worstFirst.thenComparing(Finding::type).thenComparing(Finding::path).thenComparing(Finding::message))
        .toList();
  }
}
