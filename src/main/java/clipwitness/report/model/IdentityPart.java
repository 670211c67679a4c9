package clipwitness.report.model;

import java.util.List;

/**
 * What the report is and about what.
 *
 * @param number     report number
 * @param title      title
 * @param date       date
 * @param received   when the unit came in, empty where the sheet does not say
 * @param amended    what it replaces, empty for a first report
 * @param language   language tag
 * @param paper      A4 or Letter
 * @param shop       name of the shop
 * @param contact    contact, line by line
 * @param logo       for the {@code src} attribute of an {@code img} element, empty where there is none
 * @param technician who measured
 * @param customer   customer
 * @param unit       name of the unit
 * @param unitFacts  maker, serial number, supply
 * @param work       what was done, paragraph by paragraph
 * @param software   program and version
 * @param digest     digest of the inputs
 */
public record IdentityPart(
        String number,
        String title,
        String date,
        String received,
        String amended,
        String language,
        String paper,
        String shop,
        List<String> contact,
        String logo,
        String technician,
        String customer,
        String unit,
        List<Fact> unitFacts,
        List<String> work,
        String software,
        String digest) {
    /** Copies what it is given. */
    public IdentityPart {
        contact = List.copyOf(contact);
        unitFacts = List.copyOf(unitFacts);
        work = List.copyOf(work);
    }
}
