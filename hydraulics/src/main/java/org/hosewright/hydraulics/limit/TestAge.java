package org.hosewright.hydraulics.limit;

/** Whether a hose's service test may still be relied on; the dates themselves are the company's record. */
public enum TestAge {
    /** Tested within the last 12 months. */
    IN_DATE,
    /** Tested longer ago than 12 months. */
    OVERDUE,
    /** No day of a test is known. */
    UNDATED,
    /** Made before July 1987: out of service whatever its test. @source NFPA 1962, 2013/2018 */
    TOO_OLD
}
